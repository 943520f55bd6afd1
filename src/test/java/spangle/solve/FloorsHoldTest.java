package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.audit.Audit;
import spangle.plan.Brief;
import spangle.plan.LineKind;
import spangle.plan.Plan;
import spangle.plan.PlanFigures;
import spangle.plan.bound.WeekBounds;

/** No floor lies above a plan that keeps every rule, however it was made. */
class FloorsHoldTest {

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16})
  void aPlanThatPassesTheAuditIsNeverUnderAFloor(long seed) {
    Brief brief = RandomWeek.of(seed, 20 + (int) (seed % 3) * 15);
    holds(brief, new Solver().solve(brief, options(1500, seed), ProgressListener.NOBODY));
    holds(brief, ByHand.plan(brief));
  }

  @Test
  @Tag("thorough")
  void manyWeeksNeverComeUnderAFloor() {
    for (long seed = 100; seed < 400; seed++) {
      Brief brief = RandomWeek.of(seed, 5 + (int) (seed % 60));
      holds(brief, new Solver().solve(brief, options(4000, seed), ProgressListener.NOBODY));
      holds(brief, ByHand.plan(brief));
    }
  }

  private static SolveOptions options(long steps, long seed) {
    return new SolveOptions(0, steps, seed, 1);
  }

  private static void holds(Brief brief, Plan plan) {
    assertThat(Audit.of(brief, plan)).isEmpty();
    WeekBounds floor = WeekBounds.of(brief, plan);
    PlanFigures figures = plan.figures();
    long dips =
        plan.batches().stream()
            .filter(batch -> kind(brief, batch.lineId()) == LineKind.ZINC)
            .count();
    assertThat(floor.loads()).isPositive().isLessThanOrEqualTo(figures.loads());
    assertThat((long) floor.dips()).isLessThanOrEqualTo(dips);
    assertThat(floor.ovenBatches() + floor.dips())
        .isPositive()
        .isLessThanOrEqualTo(figures.batches());
    assertThat(floor.machineMinutes()).isPositive().isLessThanOrEqualTo(figures.runMinutes());
    assertThat(floor.settingMinutes()).isLessThanOrEqualTo(figures.settingMinutes());
    assertThat(floor.settingCost()).isLessThanOrEqualTo(figures.settingCost());
    assertThat(floor.colourChanges()).isLessThanOrEqualTo(figures.colourChanges());
    assertThat(floor.colourCost()).isLessThanOrEqualTo(figures.colourCost());
    assertThat(floor.lateLots()).isLessThanOrEqualTo(figures.lateLots());
    assertThat(floor.lateMinutes()).isLessThanOrEqualTo(figures.lateMinutes());
    assertThat(floor.lateKits()).isLessThanOrEqualTo(figures.lateKits());
    assertThat(floor.goal()).isLessThanOrEqualTo(figures.goal());
  }

  private static LineKind kind(Brief brief, String lineId) {
    return brief.lines().stream()
        .filter(line -> line.id().equals(lineId))
        .findFirst()
        .orElseThrow()
        .kind();
  }
}
