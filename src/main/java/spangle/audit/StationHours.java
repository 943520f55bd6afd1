package spangle.audit;

import spangle.plan.PlannedLoad.PlannedVisit;

/** Work at a station, and the change before it, is done while the station is open. */
final class StationHours extends Rule {
  StationHours() {
    super(
        "station-hours",
        "A visit lies inside one open stretch of its station, and so does the change before it.",
        "Every lot finds time before the week ends");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      for (VisitView view1 : PlanView.visits(load)) {
        PlannedVisit visit = view1.visit();
        String station = view1.station().id();
        if (!Hours.within(view1.station().calendar(), visit.startMin(), visit.endMin())) {
          findings.add(
              load.id(),
              "is at "
                  + station
                  + " "
                  + Words.at(visit.startMin())
                  + " to "
                  + Words.at(visit.endMin())
                  + ", outside its hours");
        }
        if (view1.station().isOut(visit.place(), visit.setupStartMin(), visit.endMin())) {
          findings.add(
              load.id(),
              "is at place "
                  + visit.place()
                  + " of "
                  + station
                  + " "
                  + Words.at(visit.startMin())
                  + ", which is out of use then");
        }
        if (visit.setupStartMin() != visit.startMin()
            && !Hours.within(view1.station().calendar(), visit.setupStartMin(), visit.startMin())) {
          findings.add(
              load.id(),
              "has its change at "
                  + station
                  + " "
                  + Words.at(visit.setupStartMin())
                  + " to "
                  + Words.at(visit.startMin())
                  + ", outside its hours");
        }
      }
    }
  }
}
