package spangle.solve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.MachineFacts;
import spangle.plan.clock.Row;
import spangle.solve.move.Hanging;

/** The batches one more lot can be in, at one machine. */
final class LotSeats {
  /** Carriers tried for a batch of its own, roomiest first. */
  private static final int CARRIERS = 2;

  private final Floor floor;
  private final Hanging hanging;
  private final LotFacts lot;
  private final MachineFacts machine;

  LotSeats(Floor floor, Hanging hanging, LotFacts lot, MachineFacts machine) {
    this.floor = floor;
    this.hanging = hanging;
    this.lot = lot;
    this.machine = machine;
  }

  /** That batch with the lot on a load that is there already, or as one more load. */
  List<Batch> joining(Batch batch) {
    List<Batch> joined = new ArrayList<>();
    if (batch.frozen.isPresent()) {
      return joined;
    }
    for (int i = 0; i < batch.loads.length; i++) {
      Optional<Load> load = hanging.join(batch.loads[i], lot.index);
      if (load.isPresent()) {
        joined.add(batch.replacing(i, load.get()));
      }
    }
    for (int choice = 0; choice < lot.carriers.length; choice++) {
      Load load = floor.single(lot.index, choice);
      if (batch.takes(load, machine)) {
        joined.add(batch.with(load));
        break;
      }
    }
    joined.removeIf(b -> !b.mayRunOn(machine));
    return joined;
  }

  /** Batches of its own at that place: at the quickest setting, and at those of its neighbours. */
  List<Batch> alone(Row row, int place) {
    Set<Integer> settings = new LinkedHashSet<>();
    settings.add(quickest());
    settings.add(place > 0 ? row.batch(place - 1).setting : machine.spec.initialSetting());
    if (place < row.size()) {
      settings.add(row.batch(place).setting);
    }
    List<Batch> batches = new ArrayList<>();
    for (int setting : settings) {
      for (int choice = 0; choice < Math.min(CARRIERS, lot.carriers.length); choice++) {
        Load load = floor.single(lot.index, choice);
        if (setting >= 0 && load.dwellMin[setting] >= 0) {
          Batch batch = Batch.of(setting, load);
          if (batch.mayRunOn(machine)) {
            batches.add(batch);
          }
        }
      }
    }
    return batches;
  }

  private int quickest() {
    int best = -1;
    for (int s = 0; s < lot.dwellMin.length; s++) {
      if (lot.dwellMin[s] >= 0 && (best < 0 || lot.dwellMin[s] < lot.dwellMin[best])) {
        best = s;
      }
    }
    return best;
  }
}
