package spangle.desk;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.intake.brief.PreparedWeek;
import spangle.plan.Brief;
import spangle.plan.LineKind;
import spangle.plan.Lot;
import spangle.plan.event.LoadTimes;

/** Who must be told of a change: those who do the work, those who wait for it. */
final class Tellers {
  private final PreparedWeek week;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, LineKind> kinds = new HashMap<>();
  private final Map<String, LoadMatch.Spot> old;
  private final Map<String, LoadMatch.Spot> now;

  Tellers(
      PreparedWeek week,
      Brief before,
      Map<String, LoadMatch.Spot> old,
      Map<String, LoadMatch.Spot> now) {
    this.week = week;
    this.old = old;
    this.now = now;
    before.lots().forEach(l -> lots.put(l.id(), l));
    week.brief().lots().forEach(l -> lots.put(l.id(), l));
    week.brief().lines().forEach(l -> kinds.put(l.id(), l.kind()));
  }

  String of(List<String> ids, ChangeList.Kind kind) {
    Set<String> told = new LinkedHashSet<>();
    for (String id : ids) {
      Lot lot = lots.get(id);
      if (lot == null) {
        continue;
      }
      told.add(crew(kinds.get(lot.lineId())));
      lot.kitIds().forEach(kit -> told.add("assembly (" + kit + ")"));
      boolean lateNow = now.containsKey(id) ? late(lot, now.get(id)) : lot.lastLeg();
      boolean lateBefore = old.containsKey(id) && late(lot, old.get(id));
      if (lot.lastLeg() && lateNow && !lateBefore) {
        told.add("sales" + customer(lot));
      } else if (kind == ChangeList.Kind.DROPPED) {
        told.add("sales" + customer(lot));
      }
    }
    return String.join(", ", told);
  }

  private static boolean late(Lot lot, LoadMatch.Spot spot) {
    return LoadTimes.last(spot.batch(), spot.load()) > lot.dueMin();
  }

  private String customer(Lot lot) {
    return week.parts().stream()
        .filter(p -> p.jobId().equals(lot.jobId()) && !p.customer().isEmpty())
        .map(p -> " (" + p.customer() + ")")
        .findFirst()
        .orElse("");
  }

  private static String crew(@org.jspecify.annotations.Nullable LineKind kind) {
    if (kind == LineKind.ZINC) {
      return "kettle crew";
    }
    return kind == LineKind.LIQUID ? "hangers, painter" : "hangers, sprayer";
  }
}
