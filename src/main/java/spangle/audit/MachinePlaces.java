package spangle.audit;

/** The carriers of a batch find places in the oven or kettle. */
final class MachinePlaces extends Rule {
  MachinePlaces() {
    super(
        "machine-places",
        "The carriers of a batch find places in the oven or kettle.",
        "A batch takes no more places than its machine has");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (BatchView batch : view.openBatches()) {
      long taken = batch.loads().stream().mapToLong(load -> load.carrier().floorUnits()).sum();
      if (taken > batch.machine().capacityUnits()) {
        findings.add(
            batch.batch().id(),
            "takes "
                + taken
                + " places; "
                + batch.machine().id()
                + " has "
                + batch.machine().capacityUnits());
      }
    }
  }
}
