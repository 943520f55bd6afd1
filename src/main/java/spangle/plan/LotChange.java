package spangle.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A lot with one thing or another different. */
public final class LotChange {
  private final Lot lot;
  private Finish finish;
  private int weight;
  private int readyMin;
  private Optional<Chain> after;
  private List<String> machines;

  private LotChange(Lot lot) {
    this.lot = lot;
    this.finish = lot.finish();
    this.weight = lot.weight();
    this.readyMin = lot.readyMin();
    this.after = lot.after();
    this.machines = lot.machines();
  }

  /** So far nothing is different. */
  public static LotChange of(Lot lot) {
    return new LotChange(lot);
  }

  LotChange finish(Finish other) {
    finish = other;
    return this;
  }

  LotChange weight(int other) {
    weight = other;
    return this;
  }

  /** There from that minute of the week on. */
  public LotChange ready(int minute) {
    readyMin = minute;
    return this;
  }

  /** Behind another leg; empty = behind none. */
  public LotChange after(Optional<Chain> chain) {
    after = chain;
    return this;
  }

  /** May go into this machine too. */
  public LotChange alsoIn(String machineId) {
    machines = new ArrayList<>(machines);
    machines.add(machineId);
    return this;
  }

  /** May go into no machine. */
  public LotChange inNone() {
    machines = List.of();
    return this;
  }

  /** The lot. */
  public Lot made() {
    return new Lot(
        lot.id(),
        lot.jobId(),
        lot.partId(),
        lot.label(),
        lot.pieces(),
        lot.leg(),
        after,
        lot.lineId(),
        finish,
        lot.alone(),
        lot.batchGroup(),
        readyMin,
        lot.dueMin(),
        weight,
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
