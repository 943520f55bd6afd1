package spangle.audit;

import java.util.List;

/** Before a visit the booth has had the minutes it needs to change to the load's finish. */
final class ColourChangeMade extends Rule {
  ColourChangeMade() {
    super(
        "colour-change-made",
        "Before a load the booth has had the minutes it needs to change from what it sprayed last.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (List<VisitView> row : view.byPlace().values()) {
      int state = row.get(0).station().initialState();
      for (VisitView visit : row) {
        int needed = visit.station().setups().minutes(state, visit.state());
        long given = (long) visit.visit().startMin() - visit.visit().setupStartMin();
        if (!visit.load().frozen() && given < needed) {
          findings.add(
              visit.load().id(),
              "has "
                  + given
                  + " min of change at "
                  + visit.station().id()
                  + "; from "
                  + visit.station().setups().states().get(state)
                  + " to "
                  + visit.station().setups().states().get(visit.state())
                  + " takes "
                  + needed);
        }
        state = visit.state();
      }
    }
  }
}
