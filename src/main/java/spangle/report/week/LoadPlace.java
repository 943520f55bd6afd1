package spangle.report.week;

import java.util.List;
import spangle.plan.CarrierSpec;
import spangle.plan.Finish;
import spangle.plan.LineSpec;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/**
 * A load with everything it names looked up.
 *
 * @param load the load
 * @param batch the batch it is in
 * @param line the line it runs on
 * @param machine the oven or kettle
 * @param carrier what it hangs on
 * @param lots what hangs on it; at least one
 */
public record LoadPlace(
    PlannedLoad load,
    PlannedBatch batch,
    LineSpec line,
    MachineSpec machine,
    CarrierSpec carrier,
    List<Lot> lots) {
  /** Copies the list. */
  public LoadPlace {
    lots = List.copyOf(lots);
    if (lots.isEmpty()) {
      throw new IllegalArgumentException("load " + load.id() + " holds nothing");
    }
  }

  /** The load's number. */
  public String id() {
    return load.id();
  }

  /** What all its lots get. */
  public Finish finish() {
    return lots.get(0).finish();
  }

  /** When hanging begins. */
  public int startMin() {
    return LoadTimes.first(batch, load);
  }

  /** When the last station lets it go. */
  public int endMin() {
    return LoadTimes.last(batch, load);
  }

  /** Earliest due time of its lots. */
  public int dueMin() {
    return lots.stream().mapToInt(Lot::dueMin).min().orElseThrow();
  }

  /** Coated area. */
  public double areaM2() {
    return lots.stream().mapToDouble(Lot::areaM2).sum();
  }

  /** Mass of the parts, without the carrier. */
  public double massKg() {
    return lots.stream().mapToDouble(Lot::massKg).sum();
  }

  /** Pieces in all. */
  public int pieces() {
    return lots.stream().mapToInt(Lot::pieces).sum();
  }

  /** The setting in words. */
  public String setting() {
    return line.settings().stream()
        .filter(s -> s.index() == batch.setting())
        .findFirst()
        .map(s -> s.name())
        .orElse("");
  }
}
