package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.plan.Chain;
import spangle.plan.Lot;

/** A lot with one thing different. */
final class LotChange {
  private final Lot lot;
  private int readyMin;
  private Optional<Chain> after;
  private List<String> machines;

  private LotChange(Lot lot) {
    this.lot = lot;
    this.readyMin = lot.readyMin();
    this.after = lot.after();
    this.machines = lot.machines();
  }

  static LotChange of(Lot lot) {
    return new LotChange(lot);
  }

  LotChange ready(int minute) {
    readyMin = minute;
    return this;
  }

  LotChange after(Optional<Chain> chain) {
    after = chain;
    return this;
  }

  LotChange alsoIn(String machineId) {
    machines = new ArrayList<>(machines);
    machines.add(machineId);
    return this;
  }

  Lot made() {
    return new Lot(
        lot.id(),
        lot.jobId(),
        lot.partId(),
        lot.label(),
        lot.pieces(),
        lot.leg(),
        after,
        lot.lineId(),
        lot.finish(),
        lot.alone(),
        lot.batchGroup(),
        readyMin,
        lot.dueMin(),
        lot.weight(),
        lot.lastLeg(),
        lot.dwells(),
        machines,
        lot.carriers(),
        lot.item(),
        lot.visits(),
        lot.areaM2(),
        lot.massKg(),
        lot.materialKg(),
        lot.kitIds());
  }
}
