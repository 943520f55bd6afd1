package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import spangle.plan.Goals;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.LotNames;

/**
 * Which load of one plan is which of another. What cannot move is known by its number. Then loads
 * with the number on the sheet: of the same work, then those that share pieces of a part, with more
 * or fewer of them, so that no number stands on the list for two loads. Of the others those of the
 * same work stand in for one another: where one stood, at last in the order of time.
 */
final class LoadMatch {
  /** A load in its batch. */
  record Spot(PlannedBatch batch, PlannedLoad load) {
    String id() {
      return load.id();
    }

    int firstMin() {
      return LoadTimes.first(batch, load);
    }

    int lastMin() {
      return LoadTimes.last(batch, load);
    }

    /** The same machine, hung and in it within a quarter of an hour. */
    boolean stands(Spot other) {
      return batch.machineId().equals(other.batch.machineId())
          && Math.abs(batch.startMin() - other.batch.startMin()) <= Goals.SWING_MIN;
    }
  }

  /** The same load in both plans. */
  record Pair(Spot was, Spot is) {}

  private final List<Spot> added;
  private final List<Spot> gone;
  private final List<Pair> pairs = new ArrayList<>();

  LoadMatch(Plan before, Plan after, Map<String, Lot> lots, Set<String> fixed) {
    this.gone = spots(before);
    this.added = spots(after);
    Map<Spot, List<String>> work = new HashMap<>();
    gone.forEach(s -> work.put(s, Lot.likeness(s.load().lotIds(), lots)));
    added.forEach(s -> work.put(s, Lot.likeness(s.load().lotIds(), lots)));
    BiPredicate<Spot, Spot> number = (was, is) -> was.id().equals(is.id());
    BiPredicate<Spot, Spot> same =
        (was, is) -> work.getOrDefault(was, List.of()).equals(work.getOrDefault(is, List.of()));
    match(number.and((was, is) -> fixed.contains(is.id())));
    match(number.and(same));
    match(number.and(LoadMatch::sharesPart));
    match(same.and((was, is) -> is.stands(was)));
    match(same);
  }

  private void match(BiPredicate<Spot, Spot> fits) {
    for (Spot is : List.copyOf(added)) {
      gone.stream()
          .filter(was -> fits.test(was, is))
          .findFirst()
          .ifPresent(
              was -> {
                pairs.add(new Pair(was, is));
                gone.remove(was);
                added.remove(is);
              });
    }
  }

  private static boolean sharesPart(Spot was, Spot is) {
    return was.load().lotIds().stream()
        .map(LotNames::work)
        .anyMatch(w -> is.load().lotIds().stream().map(LotNames::work).anyMatch(w::equals));
  }

  private static List<Spot> spots(Plan plan) {
    List<Spot> spots = new ArrayList<>();
    plan.batches().forEach(b -> b.loads().forEach(l -> spots.add(new Spot(b, l))));
    spots.sort(Comparator.comparingInt((Spot s) -> s.batch().startMin()).thenComparing(Spot::id));
    return spots;
  }

  List<Pair> pairs() {
    return List.copyOf(pairs);
  }

  /** Loads that no load of the plan before is. */
  List<Spot> added() {
    return List.copyOf(added);
  }

  /** Loads of the plan before that none is any more. */
  List<Spot> gone() {
    return List.copyOf(gone);
  }
}
