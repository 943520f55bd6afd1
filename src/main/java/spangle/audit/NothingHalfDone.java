package spangle.audit;

import java.util.Optional;
import spangle.plan.Chain;
import spangle.plan.LeftOut;
import spangle.plan.Lot;

/** No step is done whose work does not keep when the next step is left out. */
final class NothingHalfDone extends Rule {
  NothingHalfDone() {
    super(
        "nothing-half-done",
        "Nothing is galvanized or primed for nothing: where the next step is left out, the step"
            + " before it is too, unless its work keeps or the shop starts it anyway.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LeftOut left : view.plan().leftOut()) {
      Optional<Lot> lot = view.lot(left.lotId());
      Optional<Chain> after = lot.flatMap(Lot::after);
      Optional<LoadView> before = after.flatMap(chain -> view.loadOf(chain.lotId()));
      if (after.isEmpty() || before.isEmpty() || before.get().frozen()) {
        continue;
      }
      Chain chain = after.get();
      if (chain.maxGapMin() != Integer.MAX_VALUE && !chain.startAnyway()) {
        findings.add(
            chain.lotId(),
            "is done and keeps "
                + chain.maxGapMin()
                + " min, but the step after it, "
                + left.lotId()
                + ", is left out");
      }
    }
  }
}
