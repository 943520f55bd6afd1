package spangle.audit;

/** The plan begins and ends inside the time it is made for. */
final class InsideTheWeek extends Rule {
  InsideTheWeek() {
    super(
        "inside-the-week",
        "Everything begins after the week's zero and ends by its horizon.",
        "Every lot finds time before the week ends");
  }

  @Override
  void check(PlanView view, Findings findings) {
    int horizon = view.brief().horizonMin();
    for (BatchView batch : view.openBatches()) {
      if (batch.batch().setupStartMin() < 0) {
        findings.add(batch.batch().id(), "begins before the week");
      }
    }
    for (LoadView load : view.openLoads()) {
      int first = load.firstMin();
      for (VisitView visit : PlanView.visits(load)) {
        first = Math.min(first, visit.visit().setupStartMin());
      }
      if (first < 0) {
        findings.add(load.id(), "begins before the week");
      }
      if (load.endMin() > horizon) {
        findings.add(
            load.id(),
            "ends " + Words.at(load.endMin()) + "; the plan reaches to " + Words.at(horizon));
      }
    }
  }
}
