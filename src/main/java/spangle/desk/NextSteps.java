package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spangle.plan.Brief;
import spangle.plan.Chain;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** Where the pieces of a load go next on a route of several steps, and by when. */
final class NextSteps {
  private record Spot(PlannedBatch batch, PlannedLoad load, Lot lot, Chain chain) {}

  private final Map<String, Spot> after = new HashMap<>();

  NextSteps(Brief brief, Plan plan) {
    Map<String, Lot> lots = new HashMap<>();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        for (String id : load.lotIds()) {
          Optional.ofNullable(lots.get(id))
              .ifPresent(
                  lot ->
                      lot.after()
                          .ifPresent(c -> after.put(c.lotId(), new Spot(batch, load, lot, c))));
        }
      }
    }
  }

  /** For the sheet of a load; one line for each load its pieces go to. */
  List<String> words(PlannedBatch batch, PlannedLoad load) {
    int done = LoadTimes.last(batch, load);
    Map<String, List<Spot>> spots = new TreeMap<>();
    for (String id : load.lotIds()) {
      Spot spot = after.get(id);
      if (spot != null) {
        spots.computeIfAbsent(spot.load().id(), k -> new ArrayList<>()).add(spot);
      }
    }
    return spots.values().stream().map(next -> words(done, next)).toList();
  }

  private static String words(int done, List<Spot> next) {
    Spot first = next.get(0);
    int least = next.stream().mapToInt(s -> s.chain().minGapMin()).max().orElse(0);
    int most = next.stream().mapToInt(s -> s.chain().maxGapMin()).min().orElse(Integer.MAX_VALUE);
    StringBuilder words = new StringBuilder("Next: ");
    words.append(String.join(", ", next.stream().map(s -> s.lot().label()).distinct().toList()));
    words.append(" on ").append(first.load().id());
    words.append(", ").append(first.lot().finish().name());
    words.append(", ").append(DayWords.of(LoadTimes.first(first.batch(), first.load())));
    if (least > 0) {
      words.append("; not before ").append(DayWords.of(done + least));
    }
    if (most != Integer.MAX_VALUE) {
      words.append(least > 0 ? ", not after " : "; not after ").append(DayWords.of(done + most));
    }
    return words.append('.').toString();
  }
}
