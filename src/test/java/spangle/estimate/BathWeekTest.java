package spangle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spangle.coating.zinc.ZincBath;

class BathWeekTest {
  private static final int DAY = 24 * 60;

  /** 6 m2 of zinc at 450 C, 6560 kg/m3 (handbook fit): 393.6 kg are 10 mm. */
  private static final ZincBath BATH = new ZincBath(5000, 1200, 2000, 450);

  private static final double KG_10_MM = 393.6;

  private static BathWeek.Dip dip(int day, double kg, double spareMm) {
    return new BathWeek.Dip(day * DAY + 600, kg, OptionalDouble.of(spareMm), "post");
  }

  @Test
  void theLevelFallsByWhatLeaves() {
    BathWeek week =
        BathWeek.of(BATH, List.of(dip(0, KG_10_MM, 100), dip(2, KG_10_MM, 100)), List.of(), 5, 25);

    assertThat(week.dropMm()).isCloseTo(20, within(0.01));
    assertThat(week.lowestMm()).isCloseTo(20, within(0.01));
    assertThat(week.dropByDayMm().get(0)).isCloseTo(10, within(0.01));
    assertThat(week.dropByDayMm().get(1)).isCloseTo(10, within(0.01));
    assertThat(week.dropByDayMm().get(4)).isCloseTo(20, within(0.01));
    assertThat(week.uncovered()).isEmpty();
    // nobody stops the kettle: the top-up comes behind the last dip, 787.2 / 25 rounded up
    assertThat(week.topUps()).containsExactly(new BathWeek.TopUp(2 * DAY + 601, 32));
  }

  @Test
  void aStopOfTheKettleFillsItUp() {
    BathWeek week =
        BathWeek.of(
            BATH,
            List.of(dip(2, KG_10_MM, 100), dip(0, KG_10_MM, 100)),
            List.of(filled(DAY), filled(4 * DAY)),
            5,
            25);

    assertThat(week.topUps())
        .containsExactly(new BathWeek.TopUp(DAY, 16), new BathWeek.TopUp(4 * DAY, 16));
    assertThat(week.lowestMm()).isCloseTo(10, within(0.01));
    assertThat(week.dropByDayMm().get(1)).isZero();
    assertThat(week.dropByDayMm().get(2)).isCloseTo(10, within(0.01));
    assertThat(week.dropByDayMm().get(4)).isZero();
  }

  @Test
  void aDeepPartIsNoLongerCoveredOnceTheLevelHasFallenPastIt() {
    List<BathWeek.Dip> dips = List.of(dip(0, KG_10_MM, 100), dip(1, 1, 9), dip(2, 1, 8));
    BathWeek week = BathWeek.of(BATH, dips, List.of(), 5, 25);

    BathWeek.Uncovered first = week.uncovered().orElseThrow();
    assertThat(first.atMin()).isEqualTo(DAY + 600);
    assertThat(first.missingMm()).isCloseTo(1, within(0.01));
    assertThat(BathWeek.of(BATH, dips, List.of(filled(DAY)), 5, 25).uncovered()).isEmpty();
    assertThat(
            BathWeek.of(BATH, List.of(dip(0, KG_10_MM, 100), dip(1, 1, 11)), List.of(), 5, 25)
                .uncovered())
        .isEmpty();
  }

  @Test
  void aBasketHasNoDepthAndAnIdleKettleNeedsNothing() {
    BathWeek.Dip basket = new BathWeek.Dip(600, 4 * KG_10_MM, OptionalDouble.empty(), "clips");
    assertThat(BathWeek.of(BATH, List.of(basket, basket), List.of(), 5, 25).uncovered()).isEmpty();
    BathWeek idle = BathWeek.of(BATH, List.of(), List.of(filled(DAY)), 5, 25);
    assertThat(idle.topUps()).isEmpty();
    assertThat(idle.dropMm()).isZero();
  }

  private static BathWeek.Mark filled(int atMin) {
    return new BathWeek.Mark(atMin, 0, true);
  }

  @Test
  void aBathThatWasReadLowIsFilledUpFromThere() {
    List<BathWeek.Mark> marks = List.of(new BathWeek.Mark(0, 10, false), filled(DAY));
    BathWeek week = BathWeek.of(BATH, List.of(dip(0, KG_10_MM, 15)), marks, 2, 25);
    // 10 mm below, 10 mm by the dip: 20 mm are 787.2 kg, 32 ingots of 25 kg
    assertThat(week.topUps()).containsExactly(new BathWeek.TopUp(DAY, 32));
    assertThat(week.lowestMm()).isCloseTo(20, within(0.01));
    assertThat(week.dropByDayMm().get(0)).isCloseTo(20, within(0.01));
    assertThat(week.dropByDayMm().get(1)).isCloseTo(0, within(0.01));
    assertThat(week.uncovered()).isEmpty();
    assertThat(
            BathWeek.of(BATH, List.of(dip(0, KG_10_MM, 9)), marks, 2, 25).uncovered().orElseThrow())
        .matches(u -> Math.abs(u.missingMm() - 1) < 0.01);
  }
}
