package spangle.audit;

import spangle.plan.Lot;

/** A carrier is not loaded beyond what it bears. */
final class CarrierMass extends Rule {
  CarrierMass() {
    super("carrier-mass", "A carrier is not loaded beyond what it bears.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      double kg = 0;
      for (Lot lot : load.lots()) {
        kg += lot.pieces() * lot.item().massKg();
      }
      if (Slack.over(kg, load.carrier().face().maxMassKg())) {
        findings.add(
            load.id(),
            "weighs "
                + Words.number(kg)
                + " kg; "
                + load.carrier().id()
                + " bears "
                + Words.number(load.carrier().face().maxMassKg()));
      }
    }
  }
}
