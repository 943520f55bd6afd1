package spangle.plan.clock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spangle.plan.Brief;
import spangle.plan.Goals;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/**
 * Where an earlier plan has its loads. Lots of the same pieces at the same step stand in for one
 * another: it is no move when two of them change places.
 */
final class Announced {
  /** Machine of the line, its setting, start, carrier, and when the load hangs. */
  private record Place(int machine, int setting, int startMin, int carrier, int firstMin) {
    boolean holds(Place now) {
      return machine == now.machine
          && setting == now.setting
          && carrier == now.carrier
          && Math.abs(startMin - now.startMin) <= Goals.SWING_MIN
          && Math.abs(firstMin - now.firstMin) <= Goals.HANG_SWING_MIN;
    }
  }

  /** What an earlier plan says of a load. */
  static final class Word {
    private static final Word NOTHING = new Word(List.of(), 0);
    private final Place[] places;
    private final int weight;

    private Word(List<Place> places, int weight) {
      this.places = places.toArray(Place[]::new);
      this.weight = weight;
    }

    /** At how many times the earlier plan has such a load. */
    int times() {
      return places.length;
    }

    /** One of them. */
    int time(int k) {
      return places[k].startMin();
    }

    /** What it counts so; 0 where the earlier plan has such a load, or says nothing of it. */
    int moved(int machine, int setting, int startMin, int carrier, int firstMin) {
      if (weight == 0) {
        return 0;
      }
      Place now = new Place(machine, setting, startMin, carrier, firstMin);
      for (Place place : places) {
        if (place.holds(now)) {
          return 0;
        }
      }
      return weight;
    }
  }

  private final boolean none;
  private final Map<List<String>, List<Place>> places = new HashMap<>();
  private final Map<String, Integer> weights = new HashMap<>();

  /** For a brief without an earlier plan. */
  Announced() {
    none = true;
  }

  Announced(
      List<PlannedBatch> batches,
      Map<String, Lot> lots,
      Map<String, Integer> machines,
      Map<String, Integer> carriers) {
    none = batches.isEmpty();
    int firstDay =
        batches.stream().mapToInt(PlannedBatch::startMin).min().orElse(0) / Brief.DAY_MIN;
    for (PlannedBatch batch : batches) {
      int machine = machines.getOrDefault(batch.machineId(), -1);
      int weight = batch.startMin() / Brief.DAY_MIN == firstDay ? Goals.STICKY : 1;
      for (PlannedLoad load : batch.loads()) {
        List<String> key = Lot.likeness(load.lotIds(), lots);
        places
            .computeIfAbsent(key, k -> new ArrayList<>())
            .add(
                new Place(
                    machine,
                    batch.setting(),
                    batch.startMin(),
                    carriers.getOrDefault(load.carrierId(), -1),
                    LoadTimes.first(batch, load)));
        key.forEach(likeness -> weights.merge(likeness, weight, Math::max));
      }
    }
  }

  /** What is said of a load of these lots. Lots the plan does not speak of may go anywhere. */
  Word of(List<Lot> lots) {
    if (none) {
      return Word.NOTHING;
    }
    List<String> key = new ArrayList<>();
    int weight = 0;
    for (Lot lot : lots) {
      key.add(lot.likeness());
      weight = Math.max(weight, weights.getOrDefault(lot.likeness(), 0));
    }
    key.sort(null);
    return new Word(places.getOrDefault(key, List.of()), weight);
  }

  boolean isEmpty() {
    return none;
  }
}
