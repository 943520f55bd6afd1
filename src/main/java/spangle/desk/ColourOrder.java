package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.FinishKind;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** In which order colours are first sprayed. */
final class ColourOrder {
  private ColourOrder() {}

  private record Sprayed(int atMin, String colour) {}

  /**
   * How many colours have another place in the order: those that must be taken out of the old order
   * and put back elsewhere to get the new one.
   *
   * @param fixed loads that cannot move and do not count
   */
  static int reordered(Plan before, Plan after, Map<String, Lot> lots, Set<String> fixed) {
    List<String> old = order(before, lots, fixed);
    List<String> now = order(after, lots, fixed);
    old.retainAll(now);
    now.retainAll(old);
    Map<String, Integer> place = new HashMap<>();
    old.forEach(colour -> place.put(colour, place.size()));
    int[] longest = new int[now.size()];
    int kept = 0;
    for (int i = 0; i < longest.length; i++) {
      longest[i] = 1;
      for (int j = 0; j < i; j++) {
        if (place.getOrDefault(now.get(j), 0) < place.getOrDefault(now.get(i), 0)) {
          longest[i] = Math.max(longest[i], longest[j] + 1);
        }
      }
      kept = Math.max(kept, longest[i]);
    }
    return now.size() - kept;
  }

  private static List<String> order(Plan plan, Map<String, Lot> lots, Set<String> fixed) {
    List<Sprayed> sprayed = new ArrayList<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        Lot lot = lots.get(load.lotIds().get(0));
        boolean paint =
            lot != null
                && (lot.finish().kind() == FinishKind.POWDER
                    || lot.finish().kind() == FinishKind.LIQUID);
        if (lot != null && paint && !fixed.contains(load.id())) {
          String colour = lot.lineId() + " " + lot.finish().materialId();
          sprayed.add(new Sprayed(LoadTimes.first(batch, load), colour));
        }
      }
    }
    sprayed.sort(Comparator.comparingInt(Sprayed::atMin).thenComparing(Sprayed::colour));
    Set<String> order = new LinkedHashSet<>();
    sprayed.forEach(s -> order.add(s.colour()));
    return new ArrayList<>(order);
  }
}
