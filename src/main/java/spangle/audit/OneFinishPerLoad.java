package spangle.audit;

import spangle.plan.Finish;
import spangle.plan.Lot;

/** What shares a carrier gets the same finish from the same booth state and the same material. */
final class OneFinishPerLoad extends Rule {
  OneFinishPerLoad() {
    super("one-finish-per-load", "Everything on one carrier gets the same finish.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      Finish first = load.lots().get(0).finish();
      for (Lot lot : load.lots()) {
        Finish other = lot.finish();
        if (!other.key().equals(first.key())
            || other.index() != first.index()
            || !other.materialLot().equals(first.materialLot())) {
          findings.add(
              load.id(),
              "carries " + first.name() + " and " + other.name() + " (" + lot.id() + ") together");
        }
      }
    }
  }
}
