package spangle.audit;

import java.util.Optional;
import spangle.plan.Chain;
import spangle.plan.Lot;

/** A leg of a route follows the leg before it within its least and its longest gap. */
final class LegAfterLeg extends Rule {
  LegAfterLeg() {
    super(
        "leg-after-leg",
        "A leg follows the leg before it, not sooner than its least gap and not later than its"
            + " longest.",
        "Every leg follows the leg before it soon enough");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      for (Lot lot : load.lots()) {
        lot.after().ifPresent(chain -> checkGap(view, load, lot, chain, findings));
      }
    }
  }

  private static void checkGap(
      PlanView view, LoadView load, Lot lot, Chain chain, Findings findings) {
    Optional<LoadView> earlier = view.loadOf(chain.lotId());
    if (earlier.isEmpty()) {
      findings.add(lot.id(), "is planned, but the leg before it, " + chain.lotId() + ", is not");
      return;
    }
    long gap = (long) load.firstMin() - earlier.get().endMin();
    if (gap < chain.minGapMin()) {
      findings.add(
          lot.id(),
          "starts "
              + gap
              + " min after "
              + chain.lotId()
              + " ended; at least "
              + chain.minGapMin()
              + " must pass");
    } else if (gap > chain.maxGapMin()) {
      findings.add(
          lot.id(),
          "starts "
              + gap
              + " min after "
              + chain.lotId()
              + " ended; at most "
              + chain.maxGapMin()
              + " may pass");
    }
  }
}
