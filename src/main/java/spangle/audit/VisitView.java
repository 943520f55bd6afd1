package spangle.audit;

import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;

/**
 * A station visit of the plan.
 *
 * @param load that makes it
 * @param visit as planned
 * @param station as the brief knows it
 */
record VisitView(LoadView load, PlannedVisit visit, StationSpec station) {
  /** State the station must be in: the finish of the load, or the only state there is. */
  int state() {
    return station.setups().states().size() > 1 ? load.lots().get(0).finish().index() : 0;
  }
}
