package spangle.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.plan.CarrierSpec;

/** Never more carriers of a kind in use than the shop owns. */
final class CarriersEnough extends Rule {
  CarriersEnough() {
    super(
        "carriers-enough",
        "At no minute are more carriers of a kind in use than the shop owns.",
        "Every lot finds a carrier");
  }

  private record Step(int atMin, int change, LoadView load) {}

  @Override
  void check(PlanView view, Findings findings) {
    for (CarrierSpec carrier : view.brief().carriers()) {
      List<Step> steps = new ArrayList<>();
      for (LoadView load : view.loads()) {
        if (load.carrier().id().equals(carrier.id())) {
          steps.add(new Step(load.firstMin(), 1, load));
          steps.add(new Step(load.endMin(), -1, load));
        }
      }
      steps.sort(Comparator.comparingInt(Step::atMin).thenComparingInt(Step::change));
      int inUse = 0;
      for (Step step : steps) {
        inUse += step.change();
        if (step.change() > 0 && inUse > carrier.owned() && !step.load().frozen()) {
          findings.add(
              step.load().id(),
              "is number "
                  + inUse
                  + " of "
                  + carrier.id()
                  + " in use at "
                  + Words.at(step.atMin())
                  + "; the shop owns "
                  + carrier.owned());
        }
      }
    }
  }
}
