package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.audit.Audit;
import spangle.plan.BathSpec;
import spangle.plan.BathSpec.Mark;
import spangle.plan.BathSpec.Need;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;

/** The kettle is open Monday 360 to 840 and Tuesday 1800 to 2280; a lot takes 2 mm of the bath. */
class ZincLevelTest {
  private static Brief week(List<Mark> marks, double spareMm) {
    return yard()
        .lots(zincLot("deep"), zincLot("a").due(840), zincLot("b").due(840))
        .bath(new BathSpec("kettle", marks, 1, List.of(new Need("deep", spareMm))))
        .build();
  }

  private static Plan plan(Brief brief) {
    Plan plan = new Solver().solve(brief, new SolveOptions(0, 5000, 1, 1), ProgressListener.NOBODY);
    assertThat(Audit.of(brief, plan)).isEmpty();
    return plan;
  }

  private static int start(Plan plan, String lot) {
    return plan.batches().stream()
        .filter(b -> b.loads().stream().anyMatch(l -> l.lotIds().contains(lot)))
        .mapToInt(PlannedBatch::startMin)
        .findFirst()
        .orElse(-1);
  }

  @Test
  void aDeepPartWaitsForTheTopUpAndTheOthersDoNot() {
    Plan plan = plan(week(List.of(new Mark(0, 60, false), new Mark(1900, 0, true)), 40));
    assertThat(start(plan, "deep")).isBetween(1900, 2280);
    assertThat(start(plan, "a")).isBetween(360, 840);
    assertThat(plan.leftOut()).isEmpty();
  }

  @Test
  void itGoesInBeforeTheOthersHaveTakenTooMuch() {
    Plan plan = plan(week(List.of(new Mark(0, 0, false)), 1));
    assertThat(start(plan, "deep")).isLessThanOrEqualTo(start(plan, "a"));
    assertThat(start(plan, "deep")).isLessThanOrEqualTo(start(plan, "b"));
    assertThat(plan.leftOut()).isEmpty();
  }

  @Test
  void withoutATopUpItIsLeftOutAndTheReasonSaysWhatOpensIt() {
    Plan plan = plan(week(List.of(new Mark(0, 60, false)), 40));
    assertThat(plan.leftOut()).extracting(LeftOut::lotId).containsExactly("deep");
    assertThat(plan.leftOut().get(0).code()).isEqualTo("zinc-level");
    assertThat(plan.leftOut().get(0).reason())
        .startsWith("the zinc of kettle covers it only while it stands no more than 40 mm below");
    assertThat(start(plan, "a")).isPositive();
  }
}
