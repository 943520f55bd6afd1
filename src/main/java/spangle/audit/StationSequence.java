package spangle.audit;

import java.util.List;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;

/** A load passes the stations ahead of the machine, the machine, and those behind it in order. */
final class StationSequence extends Rule {
  StationSequence() {
    super(
        "station-sequence",
        "A load passes the stations in the line's order, each after it has left the one before, the"
            + " machine between those ahead of it and those behind it.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      List<StationSpec> beside = PlanView.beside(load.line());
      List<String> order = beside.stream().map(StationSpec::id).toList();
      int ahead = load.line().before().size();
      int lastPlace = -1;
      long free = Long.MIN_VALUE;
      boolean throughMachine = false;
      for (PlannedVisit visit : load.load().visits()) {
        int place = order.indexOf(visit.stationId());
        if (place < lastPlace) {
          findings.add(load.id(), visit.stationId() + " comes too late in the order of the line");
        }
        lastPlace = Math.max(lastPlace, place);
        if (place >= ahead && !throughMachine) {
          throughMachine = true;
          free = pass(load, load.batch().machineId(), load.batch().startMin(), free, findings);
          free = Math.max(free, load.batch().endMin());
        }
        pass(load, visit.stationId(), visit.startMin(), free, findings);
        free = Math.max(free, visit.endMin());
      }
      if (!throughMachine) {
        pass(load, load.batch().machineId(), load.batch().startMin(), free, findings);
      }
    }
  }

  private static long pass(
      LoadView load, String where, int startMin, long free, Findings findings) {
    if (startMin < free) {
      findings.add(
          load.id(),
          "is at "
              + where
              + " from "
              + Words.at(startMin)
              + " but leaves the place before it only "
              + Words.at(free));
    }
    return free;
  }
}
