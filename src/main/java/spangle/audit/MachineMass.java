package spangle.audit;

/** Work and carriers of a batch are not heavier than the oven or crane bears. */
final class MachineMass extends Rule {
  MachineMass() {
    super(
        "machine-mass",
        "Work and carriers of a batch are together no heavier than the oven or the crane bears.",
        "A batch is no heavier than its machine bears");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (BatchView batch : view.openBatches()) {
      if (Slack.over(batch.grossKg(), batch.machine().maxMassKg())) {
        findings.add(
            batch.batch().id(),
            "weighs "
                + Words.number(batch.grossKg())
                + " kg with its carriers; "
                + batch.machine().id()
                + " bears "
                + Words.number(batch.machine().maxMassKg())
                + " kg");
      }
    }
  }
}
