package spangle.audit;

import java.util.List;
import java.util.Map;

/** Each place of a station holds one load at a time. */
final class PlaceFree extends Rule {
  PlaceFree() {
    super(
        "place-free",
        "Each place of a station holds one load at a time, and there are only so many places.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (Map.Entry<PlanView.Place, List<VisitView>> entry : view.byPlace().entrySet()) {
      List<VisitView> row = entry.getValue();
      for (VisitView visit : row) {
        int number = visit.visit().place();
        if (!visit.load().frozen() && (number < 1 || number > visit.station().alike())) {
          findings.add(
              visit.load().id(),
              "stands at place "
                  + number
                  + " of "
                  + visit.station().id()
                  + ", which has "
                  + Words.count(visit.station().alike(), "place", "places"));
        }
      }
      for (int i = 1; i < row.size(); i++) {
        VisitView before = row.get(i - 1);
        VisitView after = row.get(i);
        boolean open = !before.load().frozen() || !after.load().frozen();
        if (open && after.visit().setupStartMin() < before.visit().endMin()) {
          findings.add(
              after.load().id(),
              "takes "
                  + entry.getKey().stationId()
                  + " from "
                  + Words.at(after.visit().setupStartMin())
                  + " while "
                  + before.load().id()
                  + " holds it until "
                  + Words.at(before.visit().endMin()));
        }
      }
    }
  }
}
