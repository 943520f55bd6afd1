package spangle.audit;

import java.util.List;
import spangle.plan.Lot;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;
import spangle.plan.Visit;

/** A load visits the stations its lots need, as long as they need, and no others. */
final class StationMinutes extends Rule {
  StationMinutes() {
    super(
        "station-minutes",
        "A load visits each station its lots need, once, for the minutes they need, and no other.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      for (StationSpec station : PlanView.beside(load.line())) {
        checkStation(load, station.id(), findings);
      }
    }
  }

  private static void checkStation(LoadView load, String stationId, Findings findings) {
    List<PlannedVisit> visits =
        load.load().visits().stream().filter(v -> v.stationId().equals(stationId)).toList();
    if (visits.size() > 1) {
      findings.add(load.id(), "visits " + stationId + " " + visits.size() + " times");
    }
    boolean named = false;
    int fixedMin = 0;
    double variableMin = 0;
    for (Lot lot : load.lots()) {
      for (Visit need : lot.visits()) {
        if (need.stationId().equals(stationId)) {
          named = true;
          fixedMin = Math.max(fixedMin, need.fixedMin());
          variableMin += need.variableMin();
        }
      }
    }
    long needed = (long) Math.ceil(fixedMin + variableMin - 1e-9);
    if (visits.isEmpty()) {
      if (needed > 0) {
        findings.add(load.id(), "misses " + stationId + ", where it needs " + needed + " min");
      }
      return;
    }
    if (!named) {
      findings.add(load.id(), "visits " + stationId + ", which none of its lots needs");
    }
    for (PlannedVisit visit : visits) {
      long given = (long) visit.endMin() - visit.startMin();
      if (given < needed) {
        findings.add(
            load.id(), "is " + given + " min at " + stationId + "; its lots need " + needed);
      }
    }
  }
}
