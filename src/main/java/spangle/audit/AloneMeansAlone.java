package spangle.audit;

import spangle.plan.Lot;

/** A lot that must travel alone shares its carrier with nothing. */
final class AloneMeansAlone extends Rule {
  AloneMeansAlone() {
    super("alone-means-alone", "A lot that travels alone shares its carrier with nothing.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      for (Lot lot : load.lots()) {
        if (lot.alone() && load.lots().size() > 1) {
          findings.add(
              lot.id(),
              "must travel alone and shares "
                  + load.id()
                  + " with "
                  + Words.count(load.lots().size() - 1L, "other lot", "other lots"));
        }
      }
    }
  }
}
