package spangle.audit;

import spangle.plan.Dwell;
import spangle.plan.Lot;

/** The heaviest part of a batch cures and the lightest is not overbaked; likewise in the zinc. */
final class DwellInsideEveryWindow extends Rule {
  DwellInsideEveryWindow() {
    super(
        "dwell-inside-every-window",
        "A batch stays in at least as long as its slowest lot needs and no longer than its most"
            + " tender lot bears.",
        "The dwell windows of a batch meet and its kinds of work may");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (BatchView batch : view.openBatches()) {
      long dwellMin = (long) batch.batch().endMin() - batch.batch().startMin();
      for (Lot lot : batch.lots()) {
        for (Dwell dwell : lot.dwells()) {
          if (dwell.setting() != batch.batch().setting()) {
            continue;
          }
          if (dwellMin < dwell.minMin()) {
            findings.add(
                batch.batch().id(),
                "stays in " + dwellMin + " min; " + lot.id() + " needs " + dwell.minMin());
          } else if (dwellMin > dwell.maxMin()) {
            findings.add(
                batch.batch().id(),
                "stays in " + dwellMin + " min; " + lot.id() + " bears " + dwell.maxMin());
          }
        }
      }
    }
  }
}
