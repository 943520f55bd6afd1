package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import java.util.Map;
import spangle.plan.Brief;
import spangle.plan.BriefBuilder;
import spangle.plan.Finding;
import spangle.plan.Plan;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;
import spangle.plan.event.EventKind;
import spangle.plan.event.Said;

/** P1 hangs from 360 to 400, P2 from 420; the new plan is made at 410. */
final class LogCases {
  static final PlannedBatch FIRST = simpleBake("oven-1 #1", "P1", 360, "A");
  static final PlannedBatch SECOND = simpleBake("oven-1 #2", "P2", 420, "B");
  static final Brief BEFORE = yard().lots(powderLot("A"), powderLot("B")).build();
  static final Plan KEPT = PlanFixtures.plan(FIRST, SECOND);
  static final int AT = 410;

  static List<Finding> audit(Said said, Brief brief, Plan plan, Map<String, Integer> heldB) {
    return audit(said, brief, plan, heldB, new LogAudit.Sheets("A", "B", Map.of()));
  }

  static List<Finding> audit(
      Said said, Brief brief, Plan plan, Map<String, Integer> heldB, LogAudit.Sheets sheets) {
    return audit(
        said, brief, plan, new LogAudit.PartOrder("job-A", "part-A", 4, Map.of()), heldB, sheets);
  }

  static List<Finding> audit(
      Said said,
      Brief brief,
      Plan plan,
      LogAudit.PartOrder orderA,
      Map<String, Integer> heldB,
      LogAudit.Sheets sheets) {
    return LogAudit.of(
        new LogAudit.Case(
            BEFORE,
            KEPT,
            0,
            said.log(),
            said.log().last(),
            AT,
            brief,
            plan,
            List.of(orderA, new LogAudit.PartOrder("job-B", "part-B", 4, heldB)),
            sheets));
  }

  /** The week in which P1 hangs. */
  static BriefBuilder week() {
    return yard().lots(powderLot("A"), powderLot("B")).frozen(FIRST);
  }

  static Brief now() {
    return week().build();
  }

  static void keeps(Said said, Plan plan) {
    assertThat(audit(said, now(), plan, Map.of())).isEmpty();
  }

  static void breaks(String rule, Said said, Plan plan) {
    assertThat(audit(said, now(), plan, Map.of())).extracting(Finding::rule).containsExactly(rule);
  }

  static Said hung() {
    return new Said().load(370, EventKind.HUNG, "P1");
  }

  private LogCases() {}
}
