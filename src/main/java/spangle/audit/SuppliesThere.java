package spangle.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.Supply;

/** Powder, paint and zinc are used only once they are in the shop. */
final class SuppliesThere extends Rule {
  SuppliesThere() {
    super(
        "supplies-there",
        "Powder, paint and zinc are used only once they are in the shop: stock never falls below"
            + " nothing.",
        "Every lot finds its material");
  }

  private record Step(int atMin, double change, String subject, boolean frozen) {}

  @Override
  void check(PlanView view, Findings findings) {
    for (Supply supply : view.brief().supplies()) {
      List<Step> steps = new ArrayList<>();
      for (Supply.Arrival arrival : supply.arrivals()) {
        steps.add(new Step(arrival.atMin(), arrival.amount(), supply.materialId(), true));
      }
      for (LoadView load : view.loads()) {
        double drawn =
            load.lots().stream()
                .filter(lot -> draws(view.brief(), lot, supply))
                .mapToDouble(Lot::materialKg)
                .sum();
        if (drawn > 0) {
          steps.add(new Step(drawnAtMin(load), -drawn, load.id(), load.frozen()));
        }
      }
      walk(supply, steps, findings);
    }
  }

  /** From what is kept of its own lot, or where nothing is, from what anybody may draw on. */
  private static boolean draws(Brief brief, Lot lot, Supply supply) {
    String material = lot.finish().materialId();
    if (!material.equals(supply.materialId())) {
      return false;
    }
    String own = lot.finish().materialLot();
    boolean kept =
        !own.isEmpty()
            && brief.supplies().stream()
                .anyMatch(s -> s.materialId().equals(material) && s.keptLot().equals(own));
    return supply.keptLot().equals(kept ? own : "");
  }

  private static void walk(Supply supply, List<Step> steps, Findings findings) {
    steps.sort(
        Comparator.comparingInt(Step::atMin)
            .thenComparing(Comparator.comparingDouble(Step::change).reversed()));
    double there = 0;
    for (Step step : steps) {
      double before = there;
      there += step.change();
      if (!step.frozen() && Slack.over(0, there)) {
        findings.add(
            step.subject(),
            "draws "
                + Words.number(-step.change())
                + " of "
                + supply.name()
                + " at "
                + Words.at(step.atMin())
                + "; "
                + Words.number(Math.max(0, before))
                + " are there");
      }
    }
  }

  /** At the booth ahead of the machine that changes with the finish, else in the machine. */
  private static int drawnAtMin(LoadView load) {
    for (VisitView visit : PlanView.visits(load)) {
      boolean ahead = load.line().before().contains(visit.station());
      if (ahead && visit.station().setups().states().size() > 1) {
        return visit.visit().startMin();
      }
    }
    return load.batch().startMin();
  }
}
