package spangle.bench;

import java.util.List;
import java.util.Locale;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.solve.Progress;

/**
 * What one instance came to.
 *
 * @param name file name
 * @param jobs number of jobs
 * @param goal weighed sum
 * @param norm what the benchmark divides it by
 * @param plan the plan
 * @param firstSeconds when the first complete plan stood
 * @param nearSeconds when the plan was within one per cent of the last one
 * @param lastSeconds when the last improvement came
 */
record OvenResult(
    String name,
    int jobs,
    long goal,
    long norm,
    Plan plan,
    double firstSeconds,
    double nearSeconds,
    double lastSeconds) {

  static OvenResult of(
      String name, OvenInstance instance, Brief brief, Plan plan, List<Progress> steps) {
    long goal = plan.figures().goal() - plan.figures().leftOut() * brief.goals().leftOut();
    double near = 0;
    for (Progress step : steps) {
      near = step.seconds();
      if (step.leftOut() == plan.figures().leftOut() && step.goal() <= goal * 1.01) {
        break;
      }
    }
    return new OvenResult(
        name,
        brief.lots().size(),
        goal,
        instance.norm(),
        plan,
        steps.isEmpty() ? 0 : steps.get(0).seconds(),
        near,
        steps.isEmpty() ? 0 : steps.get(steps.size() - 1).seconds());
  }

  double value() {
    return (double) goal / norm;
  }

  String line() {
    return String.format(
        Locale.ROOT,
        "%s value %.6f goal %d run %d late %d set-up cost %d left out %d batches %d;"
            + " first plan %.2f s, within 1 %% at %.1f s, last at %.1f s",
        name,
        value(),
        goal,
        plan.figures().runMinutes(),
        plan.figures().lateLots(),
        plan.figures().settingCost(),
        plan.figures().leftOut(),
        plan.figures().batches(),
        firstSeconds,
        nearSeconds,
        lastSeconds);
  }
}
