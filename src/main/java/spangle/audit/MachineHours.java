package spangle.audit;

/** A set-up and the batch after it lie together inside one open span of the machine. */
final class MachineHours extends Rule {
  MachineHours() {
    super(
        "machine-hours",
        "A set-up and the batch after it lie together inside one open stretch of the machine.",
        "Every lot finds time before the week ends");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (BatchView batch : view.openBatches()) {
      int from = batch.batch().setupStartMin();
      int to = batch.batch().endMin();
      if (!Hours.within(batch.machine().calendar(), from, to)) {
        findings.add(
            batch.batch().id(),
            "runs "
                + Words.at(from)
                + " to "
                + Words.at(to)
                + "; "
                + batch.machine().id()
                + " is not open throughout");
      }
    }
  }
}
