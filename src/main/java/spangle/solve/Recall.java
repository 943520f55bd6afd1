package spangle.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LineFacts;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;
import spangle.plan.event.LotNames;
import spangle.solve.move.Hanging;

/**
 * Puts batches of an earlier plan back into the rows in their old order, as far as their lots are
 * still there and may still run like that: the search then starts from what people know.
 */
final class Recall {
  private final Floor floor;
  private final Hanging hanging;
  private final Map<String, Integer> lots = new HashMap<>();
  private final Map<String, Integer> carriers = new HashMap<>();

  /** By part and step: lots no earlier load names, in the order in which they can be hung. */
  private final Map<String, List<LotFacts>> newcomers = new HashMap<>();

  Recall(Floor floor, Hanging hanging) {
    this.floor = floor;
    this.hanging = hanging;
    for (LotFacts lot : floor.lots) {
      lots.put(lot.lot.id(), lot.index);
    }
    for (int c = 0; c < floor.carriers.length; c++) {
      carriers.put(floor.carriers[c].spec.id(), c);
    }
  }

  /**
   * Appends them to the rows.
   *
   * @param done lots that have a place; those recalled are marked
   */
  void recall(List<PlannedBatch> earlier, Batch[][][] rows, boolean[] done) {
    meet(earlier, done);
    List<PlannedBatch> inTime = new ArrayList<>(earlier);
    inTime.sort(Comparator.comparingInt(PlannedBatch::startMin).thenComparing(PlannedBatch::id));
    for (PlannedBatch batch : inTime) {
      for (LineFacts line : floor.lines) {
        if (!line.spec.id().equals(batch.lineId())) {
          continue;
        }
        for (int m = 0; m < line.machines.length; m++) {
          if (line.machines[m].spec.id().equals(batch.machineId())) {
            int row = m;
            made(batch, line, m, done).ifPresent(made -> append(rows[line.index], row, made, done));
          }
        }
      }
    }
  }

  private void meet(List<PlannedBatch> earlier, boolean[] done) {
    Set<String> named = new HashSet<>();
    earlier.forEach(b -> b.loads().forEach(l -> named.addAll(l.lotIds())));
    for (LotFacts lot : floor.lots) {
      if (!done[lot.index] && lot.hasPlace() && !named.contains(lot.lot.id())) {
        newcomers.computeIfAbsent(LotNames.work(lot.lot.id()), w -> new ArrayList<>()).add(lot);
      }
    }
    Comparator<LotFacts> sooner = Comparator.comparingInt(l -> l.lot.readyMin());
    Comparator<LotFacts> larger = Comparator.comparingInt(l -> -l.lot.pieces());
    newcomers.values().forEach(l -> l.sort(sooner.thenComparing(larger)));
  }

  /**
   * The lot itself, or, where its pieces come in another count now, one of the same part and step
   * that is there in time: the load stays where people know it. None is -1.
   */
  private int lotOrNewcomer(String id, PlannedBatch planned) {
    Integer known = lots.get(id);
    if (known != null) {
      return known;
    }
    List<LotFacts> others = newcomers.getOrDefault(LotNames.work(id), List.of());
    for (LotFacts other : others) {
      if (other.lot.readyMin() < planned.startMin()) {
        others.remove(other);
        return other.index;
      }
    }
    return -1;
  }

  private static void append(Batch[][] rows, int m, Batch batch, boolean[] done) {
    rows[m] = Arrays.copyOf(rows[m], rows[m].length + 1);
    rows[m][rows[m].length - 1] = batch;
    for (Load load : batch.loads) {
      for (int lot : load.lots) {
        done[lot] = true;
      }
    }
  }

  private Optional<Batch> made(PlannedBatch planned, LineFacts line, int m, boolean[] done) {
    if (planned.setting() >= line.settings) {
      return Optional.empty();
    }
    List<Load> loads = new ArrayList<>();
    for (PlannedLoad load : planned.loads()) {
      Integer carrier = carriers.get(load.carrierId());
      int[] left =
          load.lotIds().stream()
              .mapToInt(id -> lotOrNewcomer(id, planned))
              .filter(lot -> lot >= 0 && !done[lot] && floor.lots[lot].hasPlace())
              .filter(lot -> floor.lots[lot].line == line.index)
              .toArray();
      if (carrier == null || left.length == 0) {
        continue;
      }
      // What they are to get may have changed since: those that cannot stay together any more are
      // planned anew.
      LotFacts first = floor.lots[left[0]];
      int[] together =
          Arrays.stream(left)
              .filter(lot -> lot == left[0] || Hanging.mayShare(first, floor.lots[lot]))
              .toArray();
      Optional<Load> made = hanging.load(carrier, together);
      if (made.isPresent() && joins(loads, made.get(), planned.setting(), line, m)) {
        loads.add(made.get());
      }
    }
    return loads.isEmpty()
        ? Optional.empty()
        : Optional.of(Batch.of(planned.setting(), loads.toArray(Load[]::new)));
  }

  private static boolean joins(List<Load> loads, Load load, int setting, LineFacts line, int m) {
    if (load.dwellMin[setting] < 0) {
      return false;
    }
    List<Load> more = new ArrayList<>(loads);
    more.add(load);
    return Batch.of(setting, more.toArray(Load[]::new)).mayRunOn(line.machines[m]);
  }
}
