package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import spangle.plan.PlanFigures;
import spangle.plan.bound.WeekBounds;
import spangle.plan.json.PlanYardstick;
import spangle.report.TerminalSummary;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** Every plan says how near it comes to what no plan can beat, and what it saves. */
class YardstickTest {
  private static PlanDesk.Made plan(String week, long steps) {
    return new PlanDesk()
        .plan(Path.of(week), new SolveOptions(60, steps, 3, 1), ProgressListener.NOBODY)
        .made()
        .orElseThrow();
  }

  private static PlanYardstick holds(PlanDesk.Made made) {
    PlanYardstick yardstick = made.yardstick().orElseThrow();
    WeekBounds floor = yardstick.noPlanUnder();
    PlanFigures ours = made.plan().figures();
    assertThat(made.findings()).isEmpty();
    assertThat(floor.loads()).isPositive().isLessThanOrEqualTo(ours.loads());
    assertThat(floor.ovenBatches() + floor.dips()).isPositive().isLessThanOrEqualTo(ours.batches());
    assertThat(floor.machineMinutes()).isPositive().isLessThanOrEqualTo(ours.runMinutes());
    assertThat(floor.colourChanges()).isLessThanOrEqualTo(ours.colourChanges());
    assertThat(floor.settingMinutes()).isLessThanOrEqualTo(ours.settingMinutes());
    assertThat(floor.lateLots()).isLessThanOrEqualTo(ours.lateLots());
    assertThat(floor.lateKits()).isLessThanOrEqualTo(ours.lateKits());
    assertThat(floor.goal()).isLessThanOrEqualTo(ours.goal());
    return yardstick;
  }

  @Test
  void floorsOfTheSampleWeeksLieUnderTheirPlans() {
    holds(plan("samples/first-steps", 1000));
    holds(plan("samples/harbour-week", 1000));
  }

  @Test
  void theScreenAndTheSheetSayBoth() {
    PlanDesk.Made made = plan("samples/first-steps", 1000);
    PlanYardstick yardstick = holds(made);
    WeekBounds floor = yardstick.noPlanUnder();

    assertThat(TerminalSummary.of(made.report()))
        .contains("No plan under: " + floor.loads() + " loads, ")
        .contains("By hand: " + yardstick.byHand().loads() + " loads, ");
    assertThat(made.report().yardstick().bounds())
        .anySatisfy(
            bound -> {
              assertThat(bound.name()).isEqualTo("oven batches and dips");
              assertThat(bound.noPlanFewerThan()).isEqualTo(floor.ovenBatches() + floor.dips());
              assertThat(bound.ours()).isEqualTo(made.plan().figures().batches());
            });
    assertThat(made.report().yardstick().comparisons())
        .anySatisfy(
            saving -> {
              assertThat(saving.name()).isEqualTo("kWh");
              assertThat(saving.byHand()).isEqualTo(yardstick.byHandHeatKwh());
              assertThat(saving.plan()).isEqualTo(yardstick.heatKwh()).isPositive();
            });
  }
}
