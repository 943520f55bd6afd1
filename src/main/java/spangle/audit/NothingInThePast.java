package spangle.audit;

import java.util.HashSet;
import java.util.Set;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** What does not hang yet begins at the minute of the plan or later. */
final class NothingInThePast implements LogRule {
  @Override
  public String name() {
    return "nothing-in-the-past";
  }

  @Override
  public String words() {
    return "What does not hang yet begins at the minute of the plan or later.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    Set<PlannedBatch> frozen = new HashSet<>(found.brief().frozen());
    for (PlannedBatch batch : found.plan().batches()) {
      if (frozen.contains(batch)) {
        continue;
      }
      for (PlannedLoad load : batch.loads()) {
        if (Reported.firstMin(batch, load) < found.atMin()) {
          findings.add(load.id(), "begins before the plan was made and does not hang");
        }
      }
    }
  }
}
