package spangle.audit;

import spangle.plan.PlanFigures;

/** The figures a plan states are those its batches come to. */
final class FiguresAddUp extends Rule {
  FiguresAddUp() {
    super("figures-add-up", "The figures a plan states are those its batches come to.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    if (view.batches().size() != view.plan().batches().size()) {
      return;
    }
    PlanFigures stated = view.plan().figures();
    PlanFigures counted = Figures.of(view);
    compare("minutes in machines", stated.runMinutes(), counted.runMinutes(), findings);
    compare("late lots", stated.lateLots(), counted.lateLots(), findings);
    compare("minutes late", stated.lateMinutes(), counted.lateMinutes(), findings);
    compare("cost of settings", stated.settingCost(), counted.settingCost(), findings);
    compare("minutes of settings", stated.settingMinutes(), counted.settingMinutes(), findings);
    compare("cost of colours", stated.colourCost(), counted.colourCost(), findings);
    compare("colour changes", stated.colourChanges(), counted.colourChanges(), findings);
    compare("loads", stated.loads(), counted.loads(), findings);
    compare("batches", stated.batches(), counted.batches(), findings);
    compare("late kits", stated.lateKits(), counted.lateKits(), findings);
    compare("spread of sets", stated.kitMinutes(), counted.kitMinutes(), findings);
    compare("minutes until sets", stated.setMinutes(), counted.setMinutes(), findings);
    compare("trips", stated.trips(), counted.trips(), findings);
    compare("left out", stated.leftOut(), counted.leftOut(), findings);
    compare("moved loads", stated.moved(), counted.moved(), findings);
    compare("weighed sum", stated.goal(), counted.goal(), findings);
  }

  private static void compare(String what, long stated, long counted, Findings findings) {
    if (stated != counted) {
      findings.add(what, "the plan states " + stated + "; counted from its batches: " + counted);
    }
  }
}
