package spangle.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;

/** Ahead of the machine loads stay in the order in which they were fed to the line. */
final class NoOvertaking extends Rule {
  NoOvertaking() {
    super("no-overtaking", "Ahead of the machine no load overtakes another on its line.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    Map<String, List<LoadView>> byLine = new LinkedHashMap<>();
    for (LoadView load : view.loads()) {
      byLine.computeIfAbsent(load.line().id(), id -> new ArrayList<>()).add(load);
    }
    for (List<LoadView> loads : byLine.values()) {
      List<String> ahead = loads.get(0).line().before().stream().map(StationSpec::id).toList();
      List<int[]> starts =
          loads.stream().map(load -> starts(load, ahead, view.brief().horizonMin())).toList();
      for (int a = 0; a < loads.size(); a++) {
        for (int b = a + 1; b < loads.size(); b++) {
          boolean open = !loads.get(a).frozen() || !loads.get(b).frozen();
          if (open && overtakes(starts.get(a), starts.get(b))) {
            findings.add(
                loads.get(a).id(),
                "and "
                    + loads.get(b).id()
                    + " pass the stations ahead of the machine in different"
                    + " orders");
          }
        }
      }
    }
  }

  /** Start at each station; -1 where the load passes it by, or hangs and waits past the week. */
  private static int[] starts(LoadView load, List<String> ahead, int horizonMin) {
    int[] starts = new int[ahead.size()];
    for (int i = 0; i < starts.length; i++) {
      String station = ahead.get(i);
      starts[i] =
          load.load().visits().stream()
              .filter(visit -> visit.stationId().equals(station))
              .filter(visit -> !load.frozen() || visit.startMin() < horizonMin)
              .mapToInt(PlannedVisit::startMin)
              .findFirst()
              .orElse(-1);
    }
    return starts;
  }

  private static boolean overtakes(int[] first, int[] second) {
    boolean firstLeads = false;
    boolean secondLeads = false;
    for (int i = 0; i < first.length; i++) {
      if (first[i] >= 0 && second[i] >= 0) {
        firstLeads |= first[i] < second[i];
        secondLeads |= second[i] < first[i];
      }
    }
    return firstLeads && secondLeads;
  }
}
