package spangle.report.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.Kit;
import spangle.plan.Lot;

/** From which maker's lot a kit that asks for one is sprayed, powder by powder. */
final class KitPowder {
  private KitPowder() {}

  /** Words for each powder; none where the kit does not ask. */
  static List<String> of(Brief brief, Kit kit) {
    List<String> words = new ArrayList<>();
    if (!kit.oneLot()) {
      return words;
    }
    Map<String, TreeSet<String>> lots = new TreeMap<>();
    Map<String, String> names = new TreeMap<>();
    for (Lot lot : brief.lots()) {
      if (lot.lastLeg()
          && lot.finish().kind() == FinishKind.POWDER
          && lot.kitIds().contains(kit.id())) {
        String powder = lot.finish().materialId();
        lots.computeIfAbsent(powder, p -> new TreeSet<>()).add(lot.finish().materialLot());
        names.put(powder, lot.finish().name());
      }
    }
    for (Map.Entry<String, TreeSet<String>> each : lots.entrySet()) {
      SortedSet<String> from =
          each.getValue().equals(new TreeSet<>(List.of("")))
              ? boxes(brief, each.getKey())
              : each.getValue();
      String name = names.get(each.getKey());
      if (from.size() == 1 && !from.first().isEmpty()) {
        words.add(name + " from lot " + from.first());
      } else if (from.size() > 1) {
        words.add(name + " NOT from one lot: shades may differ");
      }
    }
    return words;
  }

  private static SortedSet<String> boxes(Brief brief, String powder) {
    TreeSet<String> lots = new TreeSet<>();
    brief.supplies().stream()
        .filter(s -> s.materialId().equals(powder))
        .flatMap(s -> s.arrivals().stream())
        .forEach(a -> lots.add(a.lot()));
    return lots;
  }
}
