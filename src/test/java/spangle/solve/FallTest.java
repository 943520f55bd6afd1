package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.Goals;
import spangle.plan.clock.Floor;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;

/** The temperature of a search from its beginning to its end. */
class FallTest {
  private static final double HOTTEST = 3_000_000;
  private static final double COLDEST = 0.15;

  private static WeekPlan plan(Goals goals) {
    Brief week = OvenWeek.of(7, 20);
    Brief weighed =
        new Brief(
            week.name(),
            week.monday(),
            week.horizonMin(),
            week.lines(),
            week.carriers(),
            week.lots(),
            week.kits(),
            week.supplies(),
            goals,
            week.frozen(),
            week.announced(),
            List.of());
    Floor floor = Floor.of(weighed);
    return new Builder(floor, new WeekClock(floor)).build();
  }

  private static Fall farApart() {
    Goals goals = new Goals(1_000_000, 1000, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 0);
    return Fall.of(10, HOTTEST, COLDEST, plan(goals));
  }

  @Test
  void beginsWhereItIsToldAndEndsAtTheColdest() {
    Fall fall = farApart();

    assertThat(fall.temperature(HOTTEST, 0)).isCloseTo(HOTTEST, within(1e-3));
    assertThat(fall.temperature(2000, 0)).isCloseTo(2000, within(1e-6));
    assertThat(fall.temperature(HOTTEST, 1)).isCloseTo(COLDEST, within(1e-9));
    assertThat(fall.temperature(2000, 1.5)).isCloseTo(COLDEST, within(1e-9));
  }

  @Test
  void neverRises() {
    Fall fall = farApart();
    double before = fall.temperature(HOTTEST, 0);
    for (int k = 1; k <= 200; k++) {
      double now = fall.temperature(HOTTEST, k / 200.0);
      assertThat(now).isLessThan(before);
      before = now;
    }
  }

  @Test
  void takesMostOfItsTimeWhereTheGoalIsDecidedThatMakesUpMostOfThePlan() {
    Fall fall = farApart();
    int deciding = 0;
    for (int k = 0; k < 1000; k++) {
      if (fall.temperature(HOTTEST, k / 1000.0) > 120_000) {
        deciding++;
      }
    }

    // Spread evenly over the logarithms it would be ln 25 / ln 20 000 000 = 0.19.
    assertThat(deciding / 1000.0).isBetween(0.5, 0.9);
  }

  @Test
  void ofOneGoalItIsGeometric() {
    Goals goals = new Goals(10, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 0);
    Fall fall = Fall.of(10, 30, 1.2, plan(goals));

    assertThat(fall.temperature(30, 0.5)).isCloseTo(Math.sqrt(30 * 1.2), within(1e-9));
  }
}
