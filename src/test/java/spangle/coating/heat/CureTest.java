package spangle.coating.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.coating.heat.TemperatureCurve.Reading;
import spangle.measure.MeasureException;

class CureTest {
  private static final CureWindow TEN_AT_190 = CureWindow.parse("10@190,max 20");

  private static CureRun steel(double thicknessMm, double ovenC, CureWindow window) {
    return CureRun.of(
        HeatPath.of(
            HeatedPart.bothSides(Metal.STEEL, thicknessMm), ConvectionRadiation.usual(), 20, ovenC),
        window);
  }

  @Test
  void readsWindows() {
    CureWindow window = CureWindow.parse("8@210 12@190 10@200, max 25");
    assertThat(window.points())
        .containsExactly(new CurePoint(190, 12), new CurePoint(200, 10), new CurePoint(210, 8));
    assertThat(window.maxMinutes()).isEqualTo(25);
    assertThat(window.maxIsAssumed()).isFalse();
    assertThat(window.lowestC()).isEqualTo(190);
    assertThat(window.highestC()).isEqualTo(210);
    assertThat(window.unknownAboveC()).isEqualTo(230);
    assertThat(window.text()).isEqualTo("12@190 10@200 8@210, max 25");
    assertThat(CureWindow.parse("10min@374F max 0.5h").lowestC()).isCloseTo(190, within(1e-9));
    assertThat(CureWindow.parse("10@190;max 30min").maxMinutes()).isEqualTo(30);
    assertThat(CureWindow.parse("12@190, 10@200").points()).hasSize(2);
  }

  @Test
  void aMissingMaximumIsTwiceTheLongestTimeAndSaidSo() {
    CureWindow window = CureWindow.parse("12@190 10@200");
    assertThat(window.maxMinutes()).isEqualTo(24);
    assertThat(window.maxIsAssumed()).isTrue();
    assertThat(window.text()).endsWith("max 24 assumed");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "190",
        "@190",
        "10@",
        "10@190 max",
        "10@190 max 5",
        "10@190 12@200",
        "10@190 9@190",
        "0@190",
        "10@-5",
        "10@900",
        "10@190, max 20, max 30",
        "ten@190",
        "max 20",
        "10@190kg"
      })
  void refusesWindowsThatAreNone(String text) {
    assertThatThrownBy(() -> CureWindow.parse(text)).isInstanceOf(MeasureException.class);
  }

  /** Published data sheet of a polyester: 12 at 190, 10 at 200, 8 at 210. */
  @Test
  void interpolatesLogTimeOverInverseTemperature() {
    CureWindow window = CureWindow.parse("12@190 10@200 8@210");
    assertThat(window.minutesAt(189.99)).isInfinite();
    assertThat(window.minutesAt(190)).isEqualTo(12);
    assertThat(window.minutesAt(200)).isCloseTo(10, within(1e-12));
    assertThat(window.minutesAt(210)).isCloseTo(8, within(1e-12));
    assertThat(window.minutesAt(229)).isEqualTo(8);
    double share = (1 / 463.15 - 1 / 468.15) / (1 / 463.15 - 1 / 473.15);
    double byHand = Math.exp(Math.log(12) + share * Math.log(10 / 12.0));
    assertThat(window.minutesAt(195)).isCloseTo(byHand, within(1e-12));
    assertThat(window.ratePerMinute(200)).isCloseTo(0.1, within(1e-12));
  }

  /**
   * A published article on oven dwell: heat-up 15 and cure 10 need 25; 55 min spoils a 20 min
   * powder.
   */
  @Test
  void dwellIsHeatUpPlusCure() {
    CureWindow window = CureWindow.of(new CurePoint(190, 10));
    HeatPath path =
        HeatPath.of(HeatedPart.bothSides(Metal.STEEL, 3), ConvectionRadiation.usual(), 20, 200)
            .through(190, 15);
    CureRun run = CureRun.of(path, window);
    assertThat(run.heatUpMin()).isCloseTo(15, within(1e-6));
    assertThat(run.minDwellMin()).isCloseTo(25, within(1e-6));
    assertThat(run.maxDwellMin()).isCloseTo(35, within(1e-6));
    assertThat(run.cures()).isTrue();
    assertThat(run.limitedByHeat()).isFalse();
    assertThat(55).isGreaterThan((int) run.maxDwellMin());
  }

  @Test
  void onePointOverTheWholeRunIsHeatUpPlusItsTime() {
    CureRun run = steel(6, 200, TEN_AT_190);
    assertThat(run.heatUpMin()).isCloseTo(15.1, within(0.06));
    assertThat(run.minDwellMin()).isCloseTo(run.heatUpMin() + 10, within(1e-6));
    assertThat(run.maxDwellMin()).isCloseTo(run.heatUpMin() + 20, within(1e-9));
    assertThat(run.metalCAtMinDwell()).isBetween(195.0, 200.0);
  }

  @Test
  void anOvenThatOnlyEqualsTheLowestPointNeverCures() {
    CureRun equal = steel(3, 190, TEN_AT_190);
    assertThat(equal.heatUpMin()).isInfinite();
    assertThat(equal.minDwellMin()).isInfinite();
    assertThat(equal.cures()).isFalse();
    assertThat(steel(3, 190.01, TEN_AT_190).cures()).isTrue();
    assertThat(steel(3, 150, TEN_AT_190).cures()).isFalse();
  }

  @Test
  void metalHotterThanTheSheetSpeaksOfEndsTheDwell() {
    CureRun hot = steel(3, 230, TEN_AT_190);
    double tooHot =
        HeatPath.of(HeatedPart.bothSides(Metal.STEEL, 3), ConvectionRadiation.usual(), 20, 230)
            .minutesTo(210);
    assertThat(hot.limitedByHeat()).isTrue();
    assertThat(hot.maxDwellMin()).isCloseTo(tooHot, within(1e-9));
    assertThat(hot.minDwellMin()).isGreaterThan(hot.maxDwellMin());
    assertThat(hot.cures()).isFalse();
    assertThat(steel(3, 210, TEN_AT_190).limitedByHeat()).isFalse();
  }

  @Test
  void hotterPointsShortenTheCure() {
    CureWindow several = CureWindow.parse("12@190 10@200 8@210, max 30");
    CureRun run = steel(2, 215, several);
    assertThat(run.minDwellMin() - run.heatUpMin()).isBetween(8.0, 12.0);
    CureWindow single = CureWindow.parse("12@190, max 30");
    CureRun slow = steel(2, 205, single);
    assertThat(slow.minDwellMin() - slow.heatUpMin()).isCloseTo(12, within(1e-6));
  }

  /** At a steady metal temperature the dwell is the sheet's own time. */
  @Test
  void aPartThatStartsHotNeedsTheTimeAtItsTemperature() {
    CureWindow window = CureWindow.parse("12@190 10@200 8@210");
    CureRun run =
        CureRun.of(
            HeatPath.of(
                HeatedPart.bothSides(Metal.STEEL, 3), ConvectionRadiation.usual(), 200, 200),
            window);
    assertThat(run.heatUpMin()).isZero();
    assertThat(run.minDwellMin()).isCloseTo(10, within(1e-6));
    assertThat(run.metalCAtMinDwell()).isCloseTo(200, within(1e-6));
    assertThat(run.maxDwellMin()).isEqualTo(24);
  }

  @Test
  void anOvenJustAboveTheLowestPointTakesItsTime() {
    CureWindow window = CureWindow.parse("10@190, max 20");
    CureRun run = steel(3, 190.000001, window);
    assertThat(run.minDwellMin()).isCloseTo(run.heatUpMin() + 10, within(1e-6));
  }

  @Test
  void minimumAboveMaximumCannotCure() {
    CureWindow window = CureWindow.parse("30@160 10@200, max 12");
    assertThat(steel(3, 165, window).cures()).isFalse();
    assertThat(steel(3, 165, window).minDwellMin()).isFinite();
  }

  /** The run and a fine step-by-step record of the same curve give the same index. */
  @Test
  void indexOfTheWholeCurveAgreesWithTheRun() {
    CureWindow window = CureWindow.parse("27@149 23@160 18@173 14@182 10@193 7@200, max 60");
    HeatPath path =
        HeatPath.of(HeatedPart.bothSides(Metal.STEEL, 6), ConvectionRadiation.usual(), 20, 195);
    CureRun run = CureRun.of(path, window);
    List<Reading> readings =
        IntStream.rangeClosed(0, 400)
            .mapToObj(i -> i * run.minDwellMin() / 400)
            .map(minute -> new Reading(minute, path.celsiusAt(minute)))
            .toList();
    TemperatureCurve curve = new TemperatureCurve(readings);
    assertThat(curve.cureIndex(window)).isCloseTo(1, within(0.003));
    assertThat(curve.minutesAtOrAbove(149))
        .isCloseTo(run.minDwellMin() - run.heatUpMin(), within(0.1));
  }

  @Test
  void recordedCurve() {
    TemperatureCurve curve =
        new TemperatureCurve(
            List.of(
                new Reading(0, 20),
                new Reading(10, 190),
                new Reading(25, 190),
                new Reading(30, 90)));
    assertThat(curve.cureIndex(TEN_AT_190)).isCloseTo(1.5, within(1e-9));
    assertThat(curve.minutesAtOrAbove(190)).isCloseTo(15, within(1e-9));
    assertThat(curve.minutesAtOrAbove(140)).isCloseTo(15 + 10 * 50 / 170.0 + 2.5, within(1e-9));
    assertThat(curve.minutesAtOrAbove(191)).isZero();
    assertThat(curve.peakC()).isEqualTo(190);
    assertThat(curve.overbakes(TEN_AT_190)).isFalse();
    assertThat(curve.overbakes(CureWindow.parse("10@190, max 14"))).isTrue();
    assertThat(curve.overbakes(CureWindow.parse("10@160, max 60"))).isTrue();
    assertThat(curve.overbakes(CureWindow.parse("10@170, max 60"))).isFalse();
  }

  @Test
  void refusesCurvesThatAreNone() {
    assertThatThrownBy(() -> new TemperatureCurve(List.of(new Reading(0, 20))))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new TemperatureCurve(List.of(new Reading(1, 20), new Reading(1, 30))))
        .isInstanceOf(MeasureException.class);
  }

  @Property(tries = 40)
  void aThickerPartNeedsLongerAndBearsLonger(
      @ForAll @DoubleRange(min = 0.5, max = 12) double thicknessMm) {
    CureWindow window = CureWindow.parse("12@190 10@200 8@210, max 25");
    CureRun thin = steel(thicknessMm, 205, window);
    CureRun thick = steel(thicknessMm * 1.2, 205, window);
    assertThat(thick.minDwellMin()).isGreaterThan(thin.minDwellMin());
    assertThat(thick.maxDwellMin()).isGreaterThan(thin.maxDwellMin());
  }
}
