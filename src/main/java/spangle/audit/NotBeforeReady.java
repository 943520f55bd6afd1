package spangle.audit;

import spangle.plan.Lot;

/** Nothing is hung before it has arrived. */
final class NotBeforeReady extends Rule {
  NotBeforeReady() {
    super("not-before-ready", "Nothing starts before it is ready.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      for (Lot lot : load.lots()) {
        if (load.firstMin() < lot.readyMin()) {
          findings.add(
              lot.id(),
              "starts "
                  + Words.at(load.firstMin())
                  + " in "
                  + load.id()
                  + "; it is ready "
                  + Words.at(lot.readyMin()));
        }
      }
    }
  }
}
