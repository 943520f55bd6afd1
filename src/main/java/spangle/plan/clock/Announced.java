package spangle.plan.clock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** Where an earlier plan has its loads. */
final class Announced {
  /** Machine of the line and start; machine -1 where the load is not in the earlier plan. */
  record Place(int machine, int startMin) {}

  /** Machine of every load where there is no earlier plan. */
  static final int NOT_ASKED = -2;

  private static final Place NOWHERE = new Place(-1, -1);
  private static final Place ANYWHERE = new Place(NOT_ASKED, NOT_ASKED);
  private final boolean none;
  private final Map<List<Integer>, Place> places = new HashMap<>();
  private final Set<Integer> lots = new HashSet<>();

  /** For a brief without an earlier plan. */
  Announced() {
    none = true;
  }

  Announced(List<PlannedBatch> batches, Map<String, Integer> index, Map<String, Integer> machines) {
    none = batches.isEmpty();
    for (PlannedBatch batch : batches) {
      int machine = machines.getOrDefault(batch.machineId(), -1);
      for (PlannedLoad load : batch.loads()) {
        List<Integer> key = new ArrayList<>();
        load.lotIds().forEach(id -> key.add(index.getOrDefault(id, -1)));
        key.sort(null);
        places.putIfAbsent(key, new Place(machine, batch.startMin()));
        lots.addAll(key);
      }
    }
  }

  /** Lots the earlier plan does not speak of may go anywhere. */
  Place placeOf(int[] sortedLots) {
    if (none) {
      return ANYWHERE;
    }
    List<Integer> key = new ArrayList<>();
    for (int lot : sortedLots) {
      key.add(lot);
    }
    Place place = places.get(key);
    if (place != null) {
      return place;
    }
    return key.stream().anyMatch(lots::contains) ? NOWHERE : ANYWHERE;
  }

  boolean isEmpty() {
    return none;
  }
}
