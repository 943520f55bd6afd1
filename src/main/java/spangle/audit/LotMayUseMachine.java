package spangle.audit;

import spangle.plan.Lot;

/** A lot goes into an oven or kettle it fits. */
final class LotMayUseMachine extends Rule {
  LotMayUseMachine() {
    super(
        "lot-may-use-machine",
        "A lot goes only into an oven or kettle it fits.",
        "Every lot may go in its machine");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      String machine = load.batch().machineId();
      for (Lot lot : load.lots()) {
        if (!lot.machines().contains(machine)) {
          findings.add(
              lot.id(),
              "goes into " + machine + " in " + load.id() + "; it may use " + lot.machines());
        }
      }
    }
  }
}
