package spangle.plan.event;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import spangle.plan.BathSpec;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;

/** How high the zinc stands for what hangs: by its last mark, less what dips have taken since. */
public final class ZincLevel {
  private final Brief brief;
  private final Map<String, Lot> lots = new HashMap<>();
  private final List<PlannedBatch> dips = new ArrayList<>();

  /** For the baths of a brief, no dip taken yet. */
  public ZincLevel(Brief brief) {
    this.brief = brief;
    brief.lots().forEach(l -> lots.put(l.id(), l));
  }

  /** Takes a dip that stands. */
  public void dipped(PlannedBatch batch) {
    if (!brief.baths().isEmpty()) {
      dips.add(batch);
    }
  }

  /** Whether the zinc covers all of its work when it goes in. */
  boolean covers(PlannedBatch batch) {
    return brief.baths().stream()
        .filter(bath -> bath.machineId().equals(batch.machineId()))
        .allMatch(bath -> spareMm(bath, batch) >= downMm(bath, batch.startMin()));
  }

  private static double spareMm(BathSpec bath, PlannedBatch batch) {
    return batch.loads().stream()
        .flatMap(l -> l.lotIds().stream())
        .map(bath::spareMm)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Below the usual mark when a dip begins, mm: as last known, less what the dips since took. */
  public double downMm(BathSpec bath, int atMin) {
    int since =
        bath.marks().stream()
            .mapToInt(BathSpec.Mark::atMin)
            .filter(m -> m <= atMin)
            .max()
            .orElse(Integer.MIN_VALUE);
    double takenKg =
        dips.stream()
            .filter(d -> d.machineId().equals(bath.machineId()))
            .filter(d -> d.startMin() >= since && d.startMin() < atMin)
            .flatMap(d -> d.loads().stream())
            .flatMap(l -> l.lotIds().stream())
            .map(lots::get)
            .filter(Objects::nonNull)
            .mapToDouble(Lot::materialKg)
            .sum();
    return bath.markedDownMm(atMin) + bath.mmPerKg() * takenKg;
  }
}
