package spangle.audit;

import java.util.List;

/** A kettle or oven is given no more cold steel an hour than its heating can take. */
final class HeatPerHour extends Rule {
  HeatPerHour() {
    super(
        "heat-per-hour",
        "After a batch the next waits until the heating has caught up with its steel.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (List<BatchView> row : view.byMachine().values()) {
      for (int i = 1; i < row.size(); i++) {
        BatchView before = row.get(i - 1);
        BatchView after = row.get(i);
        double kgPerHour = before.machine().kgPerHour();
        if (kgPerHour <= 0 || after.frozen()) {
          continue;
        }
        double waitMin = 60 * before.workKg() / kgPerHour;
        double given = (double) after.batch().startMin() - before.batch().startMin();
        if (Slack.over(waitMin, given)) {
          findings.add(
              after.batch().id(),
              "starts "
                  + Words.number(given)
                  + " min after "
                  + before.batch().id()
                  + "; "
                  + Words.number(before.workKg())
                  + " kg at "
                  + Words.number(kgPerHour)
                  + " kg/h take "
                  + Words.number(waitMin)
                  + " min");
        }
      }
    }
  }
}
