package spangle.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spangle.plan.PlannedBatch;

/** What has started or been released stands in the plan as it was, first in its machine's row. */
final class FrozenUntouched extends Rule {
  FrozenUntouched() {
    super(
        "frozen-untouched",
        "What has started or been released stays as it was, first in its machine's row.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    Set<PlannedBatch> planned = new HashSet<>(view.plan().batches());
    for (PlannedBatch frozen : view.brief().frozen()) {
      if (!planned.contains(frozen)) {
        findings.add(frozen.id(), "has started or been released and is not in the plan as it was");
      }
    }
    for (List<BatchView> row : view.byMachine().values()) {
      BatchView open = null;
      for (BatchView batch : row) {
        if (batch.waits(view.brief().horizonMin())) {
          continue;
        }
        if (!batch.frozen()) {
          open = batch;
        } else if (open != null) {
          findings.add(
              open.batch().id(),
              "comes before " + batch.batch().id() + ", which is frozen and stands first");
        }
      }
    }
  }
}
