package spangle.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import spangle.measure.Box;
import spangle.measure.Interval;

/** Every verdict at its limits, by plane geometry done by hand. */
class KettleFitTest {
  private static final UsableSpace KETTLE = UsableSpace.of("kettle", 3700, 1100, 1900);

  private static FitAnswer fit(double l, double w, double h) {
    return KettleFit.answer(FitRequest.of(new Box(l, w, h)), KETTLE);
  }

  @Test
  void aBoxOfTheUsableSizeGoesInStraight() {
    FitAnswer answer = fit(3700, 1100, 1900);
    assertThat(answer.verdict()).isEqualTo(Verdict.STRAIGHT);
    assertThat(answer.tiltDeg()).contains(new Interval(0, 0));
    assertThat(answer.margin()).isEqualTo(new Margin(0, 0, 0));
    assertThat(answer.dips()).isEqualTo(1);
  }

  @Test
  void aTenthOfAMillimetreMoreDoesNotGoInStraight() {
    assertThat(fit(3700.1, 1100, 1900).verdict()).isNotEqualTo(Verdict.STRAIGHT);
    assertThat(fit(3700, 1100.1, 1900).verdict()).isNotEqualTo(Verdict.STRAIGHT);
    assertThat(fit(3700, 1100, 1900.1).verdict()).isNotEqualTo(Verdict.STRAIGHT);
  }

  @Test
  void equalityHoldsWithinAMillionthOfAMillimetre() {
    assertThat(fit(3700 + 1e-7, 1100, 1900).verdict()).isEqualTo(Verdict.STRAIGHT);
    assertThat(fit(3700 + 2e-6, 1100, 1900).verdict()).isNotEqualTo(Verdict.STRAIGHT);
  }

  /** L 2.0 m, h 1.2 m: at 15 degrees 2.0 cos + 1.2 sin = 2.242, 2.0 sin + 1.2 cos = 1.677. */
  @Test
  void aCabinetTiltsUntilTheDepthIsUsedUp() {
    FitAnswer answer = fit(2000, 1200, 500);
    assertThat(answer.verdict()).isEqualTo(Verdict.STRAIGHT);
    assertThat(answer.acrossMm()).isEqualTo(500);
    Silhouette side = answer.whole().orElseThrow().side();
    assertThat(side.alongMm(15)).isCloseTo(2242.4, within(0.1));
    assertThat(side.uprightMm(15)).isCloseTo(1676.7, within(0.1));
    assertThat(side.uprightMm(45)).isCloseTo(2262.7, within(0.1));
    assertThat(answer.tiltDeg().orElseThrow().min()).isZero();
    assertThat(answer.tiltDeg().orElseThrow().max())
        .isCloseTo(
            Math.toDegrees(Math.asin(1900 / Math.hypot(2000, 1200)) - Math.atan2(1200, 2000)),
            within(1e-6));
    assertThat(answer.tiltDeg().orElseThrow().max()).isCloseTo(23.59, within(0.005));
    assertThat(answer.hangDeg()).isBetween(10.0, 23.6);
    assertThat(answer.limitedBy()).isEmpty();
  }

  @Test
  void aPartWiderThanTheKettleNeverGoesIn() {
    FitAnswer answer = fit(3000, 2200, 1300);
    assertThat(answer.verdict()).isEqualTo(Verdict.NO);
    assertThat(answer.tiltDeg()).isEmpty();
    assertThat(answer.tiltWindowsDeg()).isEmpty();
    assertThat(answer.dips()).isZero();
    assertThat(answer.margin()).isEqualTo(new Margin(700, -200, -300));
    assertThat(answer.acrossMm()).isEqualTo(1300);
    assertThat(answer.limitedBy()).contains("kettle");
    assertThat(answer.waysOut()).anyMatch(way -> way.contains("200 mm of width"));
  }

  /**
   * 4.0 m bar of 100 x 100: level it is 300 mm too long, on end far too deep, in between it fits.
   */
  @Test
  void aBarLongerThanTheKettleGoesInTilted() {
    FitAnswer answer = fit(4000, 100, 100);
    assertThat(answer.verdict()).isEqualTo(Verdict.TILTED);
    Interval tilt = answer.tiltDeg().orElseThrow();
    double diagonal = Math.hypot(4000, 100);
    double own = Math.toDegrees(Math.atan2(100, 4000));
    assertThat(tilt.min())
        .isCloseTo(own + Math.toDegrees(Math.acos(3700 / diagonal)), within(1e-6));
    assertThat(tilt.max())
        .isCloseTo(Math.toDegrees(Math.asin(1900 / diagonal)) - own, within(1e-6));
    assertThat(answer.margin().lengthMm()).isPositive();
    assertThat(answer.margin().depthMm()).isPositive();
  }

  @Test
  void aPartJustShorterThanTheKettleHasTwoWindows() {
    FitAnswer answer = fit(3690, 300, 300);
    assertThat(answer.verdict()).isEqualTo(Verdict.STRAIGHT);
    assertThat(answer.tiltWindowsDeg()).hasSize(2);
    assertThat(answer.tiltDeg().orElseThrow().min()).isZero();
    assertThat(answer.tiltDeg().orElseThrow().max()).isLessThan(3);
    assertThat(answer.tiltWindowsDeg().get(1).min()).isGreaterThan(5);
    assertThat(answer.cautions()).anyMatch(words -> words.contains("hang it there"));
  }

  @Test
  void aPartThatGoesInOnlyOnEndReportsTheWindowThatEndsThere() {
    UsableSpace pit = UsableSpace.of("pit", 800, 800, 3000);
    FitAnswer answer = KettleFit.answer(FitRequest.of(new Box(2900, 700, 600)), pit);
    assertThat(answer.verdict()).isEqualTo(Verdict.STRAIGHT);
    assertThat(answer.tiltDeg().orElseThrow().max()).isEqualTo(90);
    assertThat(answer.margin().depthMm()).isEqualTo(100);
  }

  /** A plate 2.4 x 1.25 m, 20 thick, in a space 2.5 x 1.0 x 1.0 m goes in only rolled about 2.4. */
  @Test
  void aPlateTooHighAndTooWideGoesInRolled() {
    UsableSpace space = UsableSpace.of("kettle", 2500, 1000, 1000);
    FitAnswer answer = KettleFit.answer(FitRequest.of(new Box(2400, 1250, 20)), space);
    assertThat(answer.verdict()).isEqualTo(Verdict.TILTED);
    Interval roll = answer.rollDeg().orElseThrow();
    double middle = Math.toRadians(roll.middle());
    assertThat(20 * Math.cos(middle) + 1250 * Math.sin(middle)).isLessThanOrEqualTo(1000);
    assertThat(20 * Math.sin(middle) + 1250 * Math.cos(middle)).isLessThanOrEqualTo(1000);
    double limit = Math.toRadians(roll.max());
    assertThat(20 * Math.cos(limit) + 1250 * Math.sin(limit)).isCloseTo(1000, within(1e-5));
    assertThat(answer.acrossMm()).isEqualTo(20);
    assertThat(answer.tiltDeg()).isPresent();
  }

  /** (h + v) / 2 = (3500 + 300) / 2 = 1900: turned over, exactly at the limit. */
  @Test
  void turnedOverReachesPastTheMiddleByHalfTheOverlap() {
    FitAnswer answer = fit(3700, 1100, 3500);
    assertThat(answer.verdict()).isEqualTo(Verdict.TWO_DIPS);
    TwoDips dips = answer.twoDips().orElseThrow();
    assertThat(dips.form()).isEqualTo(TwoDips.Form.TURNED_OVER);
    assertThat(dips.reachMm()).isEqualTo(1900);
    assertThat(answer.tiltDeg()).isEmpty();
    assertThat(answer.dipTiltDeg()).isEmpty();
    assertThat(answer.dips()).isEqualTo(2);
    assertThat(answer.overlapMm()).hasValue(300);
    assertThat(answer.margin().depthMm()).isZero();
    assertThat(fit(3700, 1100, 3500.1).verdict()).isEqualTo(Verdict.NO);
  }

  /**
   * A frame 5.0 x 0.4 x 1.0 m: level far too long; at 33.8 degrees half and overlap are covered.
   */
  @Test
  void endOutLeavesOverTheRim() {
    FitAnswer answer = fit(5000, 1000, 400);
    assertThat(answer.verdict()).isEqualTo(Verdict.TWO_DIPS);
    TwoDips dips = answer.twoDips().orElseThrow();
    assertThat(dips.form()).isEqualTo(TwoDips.Form.END_OUT);
    for (double deg : new double[] {dips.dipTiltDeg().orElseThrow().min(), dips.hangDeg()}) {
      double a = Math.toRadians(deg);
      assertThat((3700 - dips.hMm() * Math.sin(a)) * Math.tan(a))
          .isGreaterThanOrEqualTo(1900 + 150 - 1e-5);
      assertThat((1900 - dips.hMm() * Math.cos(a)) / Math.sin(a))
          .isGreaterThanOrEqualTo((5000 + 300) / 2.0 - 1e-5);
    }
    assertThat(answer.tiltDeg()).isEmpty();
    assertThat(answer.cautions()).anyMatch(words -> words.contains("free end"));
  }

  /**
   * A thin bar's rule (h = 0: tan a = 2050 / 3700, 1900 / sin a = 3921 mm reached, 7541 mm long
   * with the overlap) says yes to a 7 m box 900 high; by the box's own height it does not go.
   */
  @Test
  void theThinBarRuleIsNotTakenForABox() {
    FitAnswer answer = fit(7000, 1000, 900);
    assertThat(7000).isLessThan((int) (2 * Math.hypot(1900, 1900.0 * 3700 / 2050) - 300));
    assertThat(answer.verdict()).isEqualTo(Verdict.NO);
    assertThat(fit(7000, 20, 20).verdict()).isEqualTo(Verdict.TWO_DIPS);
  }

  @Test
  void aRoomKnowsNoSecondDip() {
    UsableSpace oven = new UsableSpace("oven", 3700, 1100, 1900, 0);
    FitAnswer answer = KettleFit.room(FitRequest.of(new Box(3700, 1100, 3000)), oven);
    assertThat(answer.verdict()).isEqualTo(Verdict.NO);
    assertThat(
            KettleFit.room(FitRequest.of(new Box(1000, 1000, 1900)), oven.behindDoor(1000, 1850))
                .verdict())
        .isEqualTo(Verdict.STRAIGHT);
    assertThat(
            KettleFit.room(FitRequest.of(new Box(1900, 1900, 1000)), oven.behindDoor(1000, 1850))
                .verdict())
        .isNotEqualTo(Verdict.STRAIGHT);
  }
}
