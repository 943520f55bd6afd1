package spangle.audit;

import spangle.plan.Lot;

/** A lot runs on the line its leg asks for. */
final class LotOnItsLine extends Rule {
  LotOnItsLine() {
    super("lot-on-its-line", "A lot runs on the line its route names.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      for (Lot lot : load.lots()) {
        if (!lot.lineId().equals(load.line().id())) {
          findings.add(
              lot.id(),
              "runs on "
                  + load.line().id()
                  + " in "
                  + load.id()
                  + "; its route says "
                  + lot.lineId());
        }
      }
    }
  }
}
