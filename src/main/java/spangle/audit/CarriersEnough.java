package spangle.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spangle.plan.CarrierSpec;

/**
 * Never more carriers of a kind in use than the shop owns. Where the floor reported one carrier
 * with two loads at once, it is one carrier.
 */
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
      int planned = 0;
      Map<Integer, Integer> reported = new HashMap<>();
      for (Step step : steps) {
        if (step.load().frozen()) {
          count(reported, step.load().load().carrierNumber(), step.change());
        } else {
          planned += step.change();
        }
        int inUse = planned + reported.size();
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

  private static void count(Map<Integer, Integer> loads, int carrier, int change) {
    int now = loads.getOrDefault(carrier, 0) + change;
    if (now == 0) {
      loads.remove(carrier);
    } else {
      loads.put(carrier, now);
    }
  }
}
