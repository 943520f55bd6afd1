package spangle.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.clock.Batch;
import spangle.plan.clock.CarrierFacts;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LineFacts;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.MachineFacts;

/** The rows of a plan that was written, as the clock reads them: the way back of a plan writer. */
final class KeptRows {
  private final Floor floor;
  private final Map<String, Integer> lots = new HashMap<>();
  private final Map<String, Integer> carriers = new HashMap<>();

  KeptRows(Floor floor) {
    this.floor = floor;
    for (LotFacts lot : floor.lots) {
      lots.put(lot.lot.id(), lot.index);
    }
    for (CarrierFacts carrier : floor.carriers) {
      carriers.put(carrier.spec.id(), carrier.index);
    }
  }

  int lot(String id) {
    Integer index = lots.get(id);
    if (index == null) {
      throw new IllegalArgumentException("the brief knows no lot " + id);
    }
    return index;
  }

  /**
   * By line, machine and place; batches the brief has frozen stand first, as the brief has them.
   */
  Batch[][][] of(Plan plan) {
    Set<String> frozen = new HashSet<>();
    floor.brief.frozen().forEach(batch -> frozen.add(batch.id()));
    Batch[][][] rows = new Batch[floor.lines.length][][];
    for (LineFacts line : floor.lines) {
      rows[line.index] = new Batch[line.machines.length][];
      for (MachineFacts machine : line.machines) {
        List<Batch> row = new ArrayList<>(List.of(floor.frozen(line.index, machine.index)));
        plan.batches().stream()
            .filter(b -> b.lineId().equals(line.spec.id()))
            .filter(b -> b.machineId().equals(machine.spec.id()) && !frozen.contains(b.id()))
            .sorted(Comparator.comparingInt(PlannedBatch::startMin))
            .map(this::batch)
            .forEach(row::add);
        rows[line.index][machine.index] = row.toArray(Batch[]::new);
      }
    }
    return rows;
  }

  private Batch batch(PlannedBatch planned) {
    Load[] loads = planned.loads().stream().map(this::load).toArray(Load[]::new);
    return Batch.of(planned.setting(), loads);
  }

  private Load load(PlannedLoad planned) {
    Integer carrier = carriers.get(planned.carrierId());
    if (carrier == null) {
      throw new IllegalArgumentException("the brief knows no carrier " + planned.carrierId());
    }
    int[] hung = planned.lotIds().stream().mapToInt(this::lot).sorted().toArray();
    return floor.load(carrier, hung);
  }
}
