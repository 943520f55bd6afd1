package spangle.audit;

import spangle.plan.Lot;

/** A lot hangs on a carrier it fits, and the carrier belongs to the line. */
final class LotMayUseCarrier extends Rule {
  LotMayUseCarrier() {
    super(
        "lot-may-use-carrier",
        "A lot hangs only on a carrier it fits, and a carrier stays on its line.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      String carrier = load.carrier().id();
      if (!load.carrier().lineId().equals(load.line().id())) {
        findings.add(
            load.id(),
            "carrier "
                + carrier
                + " belongs to "
                + load.carrier().lineId()
                + ", not to "
                + load.line().id());
      }
      for (Lot lot : load.lots()) {
        if (!lot.carriers().contains(carrier)) {
          findings.add(
              lot.id(),
              "hangs on " + carrier + " in " + load.id() + "; it may use " + lot.carriers());
        }
      }
    }
  }
}
