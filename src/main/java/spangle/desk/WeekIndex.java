package spangle.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import spangle.plan.Brief;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PartFacts;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** Lots, parts and lines of a week by their names. */
final class WeekIndex {
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, PartFacts> parts = new HashMap<>();
  private final Map<String, LineSpec> lines = new HashMap<>();

  WeekIndex(Brief brief, List<PartFacts> facts) {
    brief.lots().forEach(l -> lots.put(l.id(), l));
    brief.lines().forEach(l -> lines.put(l.id(), l));
    facts.forEach(p -> parts.put(key(p.jobId(), p.partId()), p));
  }

  static String key(String jobId, String partId) {
    return jobId + "/" + partId;
  }

  Lot lot(String id) {
    return found(lots.get(id), "lot", id);
  }

  PartFacts part(Lot lot) {
    String key = key(lot.jobId(), lot.partId());
    return found(parts.get(key), "part", key);
  }

  LineSpec line(String id) {
    return found(lines.get(id), "line", id);
  }

  /** Any lot of a load; all of them share a finish. */
  Lot first(PlannedLoad load) {
    return lot(load.lotIds().get(0));
  }

  /** Any lot of a batch. */
  Lot first(PlannedBatch batch) {
    return first(batch.loads().get(0));
  }

  private static <T> T found(@Nullable T value, String what, String id) {
    if (value == null) {
      throw new IllegalStateException(
          "the plan names a " + what + " the week does not have: " + id);
    }
    return value;
  }
}
