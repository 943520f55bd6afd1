package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.dip;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.audit.Audit;
import spangle.equipment.Span;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.PlacesOut;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad.PlannedVisit;

/** The yard pickles in two tanks; the second is out on Monday until 12:00, minute 720. */
class PlacesOutTest {
  private static Brief week(int out) {
    return yard()
        .lots(zincLot("a").alone().due(500), zincLot("b").alone().due(500))
        .station("pickle", s -> s.having(s.alike(), List.of(new PlacesOut(out, new Span(0, 720)))))
        .build();
  }

  private static Plan solved(Brief brief) {
    Plan plan = new Solver().solve(brief, new SolveOptions(0, 2000, 1, 1), ProgressListener.NOBODY);
    assertThat(Audit.of(brief, plan)).isEmpty();
    return plan;
  }

  private static List<PlannedVisit> pickling(Plan plan) {
    return plan.batches().stream()
        .flatMap(b -> b.loads().stream())
        .flatMap(l -> l.visits().stream())
        .filter(v -> v.stationId().equals("pickle"))
        .toList();
  }

  @Test
  void theOtherPlaceWorksOn() {
    List<PlannedVisit> visits = pickling(solved(week(1)));
    // 30 minutes each, one after the other from 360 on
    assertThat(visits).hasSize(2).allMatch(v -> v.place() == 1 && v.endMin() <= 420);
  }

  @Test
  void whereAllAreOutNothingRunsUntilTheyAreBack() {
    assertThat(pickling(solved(week(2)))).hasSize(2).allMatch(v -> v.startMin() >= 720);
  }

  @Test
  void theAuditFindsWorkAtAPlaceThatIsOut() {
    assertThat(Audit.of(week(1), at(2, 360)))
        .extracting(Finding::rule, Finding::words)
        .anySatisfy(
            t ->
                assertThat(t.toList().toString())
                    .contains("station-hours", "is at place 2 of pickle", "out of use then"));
    assertThat(Audit.of(week(1), at(1, 360)))
        .extracting(Finding::rule)
        .doesNotContain("station-hours");
    assertThat(Audit.of(week(1), at(2, 720)))
        .extracting(Finding::rule)
        .doesNotContain("station-hours");
  }

  private static Plan at(int place, int start) {
    PlannedBatch dip =
        dip(
            "kettle #1",
            start + 32,
            start + 36,
            load("Z01", "beam", "a")
                .visit("pickle", place, start, start, start + 30)
                .visit("flux", start + 30, start + 32)
                .visit("cool", start + 36, start + 46)
                .row("a", 4, 60));
    return plan(dip);
  }
}
