package spangle.audit;

import java.util.List;

/** An oven or kettle holds one batch at a time and rests between two as long as it must. */
final class OneBatchAtATime extends Rule {
  OneBatchAtATime() {
    super(
        "one-batch-at-a-time",
        "An oven or kettle holds one batch at a time, and between two it has its turnaround and its"
            + " set-up.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (BatchView batch : view.openBatches()) {
      if (batch.batch().endMin() < batch.batch().startMin()) {
        findings.add(batch.batch().id(), "ends before it starts");
      }
    }
    for (List<BatchView> row : view.byMachine().values()) {
      for (int i = 1; i < row.size(); i++) {
        BatchView before = row.get(i - 1);
        BatchView after = row.get(i);
        if (before.frozen() && after.frozen()) {
          continue;
        }
        long free = (long) before.batch().endMin() + before.machine().turnaroundMin();
        if (after.batch().setupStartMin() < free) {
          findings.add(
              after.batch().id(),
              "begins "
                  + Words.at(after.batch().setupStartMin())
                  + "; "
                  + before.machine().id()
                  + " is free after "
                  + before.batch().id()
                  + " from "
                  + Words.at(free));
        }
      }
    }
  }
}
