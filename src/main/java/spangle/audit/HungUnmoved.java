package spangle.audit;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** What hangs keeps its pieces, carrier, pattern, batch and machine; only its clock may run on. */
final class HungUnmoved implements LogRule {
  @Override
  public String name() {
    return "hung-unmoved";
  }

  @Override
  public String words() {
    return "What was reported hung or further, and not taken down, keeps its pieces, carrier, batch and"
        + " machine.";
  }

  private record Place(PlannedBatch batch, PlannedLoad load) {}

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    Map<String, Place> now = new HashMap<>();
    for (PlannedBatch batch : found.plan().batches()) {
      batch.loads().forEach(load -> now.put(load.id(), new Place(batch, load)));
    }
    Set<String> fixed = Reported.fixed(found);
    for (PlannedBatch batch : found.kept().batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (!fixed.contains(load.id())) {
          continue;
        }
        Place is = now.get(load.id());
        if (is == null) {
          findings.add(load.id(), "was reported hung and is not in the plan any more");
        } else if (!same(new Place(batch, load), is)) {
          findings.add(
              load.id(),
              "was reported hung in "
                  + batch.id()
                  + " on "
                  + batch.machineId()
                  + " and has been changed");
        }
      }
    }
  }

  private static boolean same(Place was, Place is) {
    return was.batch().id().equals(is.batch().id())
        && was.batch().machineId().equals(is.batch().machineId())
        && was.batch().setting() == is.batch().setting()
        && was.load().lotIds().equals(is.load().lotIds())
        && was.load().carrierId().equals(is.load().carrierId())
        && was.load().carrierNumber() == is.load().carrierNumber()
        && was.load().pattern().equals(is.load().pattern());
  }
}
