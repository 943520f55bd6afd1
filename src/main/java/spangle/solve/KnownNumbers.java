package spangle.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;

/** Numbers loads have had in an earlier plan: the same work keeps the number people know. */
final class KnownNumbers {
  private final Floor floor;
  private final Map<List<String>, Deque<String>> free = new HashMap<>();
  private final Set<String> all = new HashSet<>();

  KnownNumbers(Floor floor, List<PlannedBatch> earlier) {
    this.floor = floor;
    Map<String, Lot> lots = new HashMap<>();
    for (LotFacts lot : floor.lots) {
      lots.put(lot.lot.id(), lot.lot);
    }
    List<PlannedBatch> inTime = new ArrayList<>(earlier);
    inTime.sort(Comparator.comparingInt(PlannedBatch::startMin).thenComparing(PlannedBatch::id));
    for (PlannedBatch batch : inTime) {
      for (PlannedLoad load : batch.loads()) {
        List<String> key = new ArrayList<>();
        for (String id : load.lotIds()) {
          Lot lot = lots.get(id);
          key.add(lot == null ? id : lot.likeness());
        }
        key.sort(null);
        free.computeIfAbsent(key, k -> new ArrayDeque<>()).add(load.id());
        all.add(load.id());
      }
    }
  }

  /** The number such a load had; the first in time is given out first. */
  Optional<String> take(Load load) {
    List<String> key = new ArrayList<>();
    for (int lot : load.lots) {
      key.add(floor.lots[lot].lot.likeness());
    }
    key.sort(null);
    Deque<String> numbers = free.get(key);
    return numbers == null ? Optional.empty() : Optional.ofNullable(numbers.poll());
  }

  /** All numbers, whether their work is still there or not: none is given to other work. */
  Set<String> all() {
    return Set.copyOf(all);
  }
}
