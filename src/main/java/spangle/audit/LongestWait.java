package spangle.audit;

import java.util.List;
import spangle.plan.LineSpec;
import spangle.plan.StationSpec;

/** Washed work is coated and fluxed work dipped before it spoils. */
final class LongestWait extends Rule {
  LongestWait() {
    super(
        "longest-wait",
        "After a station a load waits no longer than its state keeps: wash to coat, flux to zinc.",
        "Every lot is planned without waiting too long between stations");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      List<VisitView> visits = PlanView.visits(load);
      for (int i = 0; i < visits.size(); i++) {
        StationSpec station = visits.get(i).station();
        boolean ahead = isAhead(load.line(), station);
        boolean nextAhead =
            i + 1 < visits.size() && isAhead(load.line(), visits.get(i + 1).station());
        long next;
        if (ahead && !nextAhead) {
          next = load.batch().startMin();
        } else if (i + 1 < visits.size()) {
          next = visits.get(i + 1).visit().startMin();
        } else {
          continue;
        }
        long waited = next - visits.get(i).visit().endMin();
        if (waited > station.longestWaitAfterMin()) {
          findings.add(
              load.id(),
              "waits "
                  + waited
                  + " min after "
                  + station.id()
                  + "; longest allowed is "
                  + station.longestWaitAfterMin());
        }
      }
    }
  }

  private static boolean isAhead(LineSpec line, StationSpec station) {
    return line.before().stream().anyMatch(s -> s.id().equals(station.id()));
  }
}
