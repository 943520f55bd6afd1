package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.Goals;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/**
 * Which load of one plan is which of another. What cannot move is known by its number; else loads
 * of the same work stand in for one another: those that stand where one stood are the same, the
 * rest are taken in the order of time.
 */
final class LoadMatch {
  /** A load in its batch. */
  record Spot(PlannedBatch batch, PlannedLoad load) {}

  /** The same load in both plans. */
  record Pair(Spot was, Spot is) {}

  private final Map<String, Lot> lots;
  private final List<Pair> pairs = new ArrayList<>();
  private final List<Spot> added = new ArrayList<>();
  private final List<Spot> gone = new ArrayList<>();

  LoadMatch(Plan before, Plan after, Map<String, Lot> lots, Set<String> fixed) {
    this.lots = lots;
    Map<String, Spot> oldById = new LinkedHashMap<>();
    spots(before).forEach(s -> oldById.put(s.load().id(), s));
    List<Spot> open = new ArrayList<>();
    for (Spot is : spots(after)) {
      Spot was = fixed.contains(is.load().id()) ? oldById.remove(is.load().id()) : null;
      if (was == null) {
        open.add(is);
      } else {
        pairs.add(new Pair(was, is));
      }
    }
    Map<List<String>, List<Spot>> waiting = new LinkedHashMap<>();
    oldById.values().forEach(s -> waiting.computeIfAbsent(work(s), w -> new ArrayList<>()).add(s));
    List<Spot> elsewhere = new ArrayList<>();
    for (Spot is : open) {
      if (!match(waiting.getOrDefault(work(is), List.of()), is, true)) {
        elsewhere.add(is);
      }
    }
    for (Spot is : elsewhere) {
      if (!match(waiting.getOrDefault(work(is), List.of()), is, false)) {
        added.add(is);
      }
    }
    waiting.values().forEach(gone::addAll);
  }

  private boolean match(List<Spot> waiting, Spot is, boolean inPlace) {
    for (Spot was : waiting) {
      boolean there =
          was.batch().machineId().equals(is.batch().machineId())
              && Math.abs(was.batch().startMin() - is.batch().startMin()) <= Goals.SWING_MIN;
      if (there || !inPlace) {
        pairs.add(new Pair(was, is));
        waiting.remove(was);
        return true;
      }
    }
    return false;
  }

  private static List<Spot> spots(Plan plan) {
    List<Spot> spots = new ArrayList<>();
    plan.batches().forEach(b -> b.loads().forEach(l -> spots.add(new Spot(b, l))));
    spots.sort(
        Comparator.comparingInt((Spot s) -> s.batch().startMin())
            .thenComparing(s -> s.load().id()));
    return spots;
  }

  private List<String> work(Spot spot) {
    return spot.load().lotIds().stream()
        .map(
            id -> {
              Lot lot = lots.get(id);
              return lot == null ? id : lot.likeness();
            })
        .sorted()
        .toList();
  }

  List<Pair> pairs() {
    return List.copyOf(pairs);
  }

  List<Spot> added() {
    return List.copyOf(added);
  }

  List<Spot> gone() {
    return List.copyOf(gone);
  }
}
