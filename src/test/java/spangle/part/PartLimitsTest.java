package spangle.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.measure.Box;
import spangle.part.Agreement.Doubt;
import spangle.part.Agreement.Reading;
import spangle.part.Agreement.Verdict;

/** The limits themselves and what is named when they are passed; hand sums. */
class PartLimitsTest {
  private static final double STEEL = 7850;

  /** Powers of two, so that the ratios are exact: 0.75 m2 of 1.5 m2 is 100 % apart. */
  private static Given eachOther(double areaM2, double massKg, double thicknessMm, int pieces) {
    return new Given(
        OptionalDouble.of(areaM2),
        OptionalDouble.of(massKg),
        OptionalDouble.of(thicknessMm),
        Optional.empty(),
        2000,
        pieces,
        Optional.empty());
  }

  /** 8 kg of 2 mm at 2000 kg/m3 have 4 m2. One and a half times 4 is 6: just still asked. */
  @ParameterizedTest
  @CsvSource({"4.39, AGREES", "6, ASK", "6.0001, BLOCK", "4.41, ASK"})
  void aLimitItselfIsStillGood(double areaM2, Verdict verdict) {
    assertThat(AreaMassCheck.check(eachOther(areaM2, 8, 2, 1)).verdict()).isEqualTo(verdict);
  }

  /**
   * Half of 4 m2 less ten per cent: twice 1.82 is 3.64, 9.9 % under 4; twice 1.81 is 10.5 %. With
   * one piece the job is the piece: nothing per job is supposed.
   */
  @ParameterizedTest
  @CsvSource({
    "1.82, 8, 1, ONE_FACE, true",
    "1.81, 8, 1, ONE_FACE, false",
    "2.19, 8, 1, ONE_FACE, true",
    "2.21, 8, 1, ONE_FACE, false",
    "12, 8, 1, AREA_PER_JOB, false",
    "12, 8, 3, AREA_PER_JOB, true",
    "4, 24, 1, MASS_PER_JOB, false",
    "4, 24, 3, MASS_PER_JOB, true"
  })
  void aSuppositionAgreesWithinTenPerCent(
      double areaM2, double massKg, int pieces, Trap trap, boolean supposed) {
    assertThat(traps(eachOther(areaM2, massKg, 2, pieces)).contains(trap)).isEqualTo(supposed);
  }

  /** A thickness of 2 in written as 2: said as 2 mm, then 50.8 mm. */
  @Test
  void theReadingSaysBothFigures() {
    Doubt doubt = AreaMassCheck.check(eachOther(4, 8 * 25.4, 2, 1)).doubts().get(0);

    assertThat(doubt.readings())
        .contains(new Reading(Trap.THICKNESS_IN_INCHES, "as written 2 mm, then 50.8 mm"));
  }

  /** The cut edges of a 100 x 100 x 10 piece, 0.004 m2, do not grow when its mass was in pounds. */
  @Test
  void cutEdgesStayWhenTheMassIsReadAnew() {
    Given given =
        new Given(
            OptionalDouble.of(0.024),
            OptionalDouble.of(0.785 / 0.45359237),
            OptionalDouble.of(10),
            Optional.of(new Box(100, 100, 10)),
            STEEL,
            1,
            Optional.empty());

    // 0.785 kg of 10 mm steel: 0.02 m2 of faces and 0.004 m2 of edges.
    assertThat(traps(given)).contains(Trap.POUNDS);
    assertThat(AreaMassCheck.check(given).doubts().get(0).words())
        .isEqualTo("area 0.024 m2 is written, its mass and thickness give 0.04409 m2: 84 % apart");
  }

  private static List<Trap> traps(Given given) {
    return AreaMassCheck.check(given).doubts().stream()
        .flatMap(doubt -> doubt.readings().stream())
        .map(Reading::trap)
        .toList();
  }

  @Test
  void everyLengthIsNamedWhenItIsMissing() {
    assertThatThrownBy(() -> Hole.rectangle(1, 0, 20)).hasMessageContaining("opening length 0");
    assertThatThrownBy(() -> Hole.rectangle(1, 20, 0)).hasMessageContaining("opening width 0");
    assertThatThrownBy(() -> Hole.slot(1, 20, 0)).hasMessageContaining("slot width 0");
    Box box = new Box(10, 10, 10);
    assertThatThrownBy(() -> FoldedBlank.rectangle(0, 10, 1, 1, box))
        .hasMessageContaining("blank length 0");
    assertThatThrownBy(() -> FoldedBlank.rectangle(10, 0, 1, 1, box))
        .hasMessageContaining("blank width 0");
    assertThatThrownBy(() -> FoldedBlank.angle(0, 40, 300, 2)).hasMessageContaining("leg 0 is");
    assertThatThrownBy(() -> FoldedBlank.angle(40, Double.NaN, 300, 2))
        .hasMessageContaining("leg NaN is not between");
    assertThatThrownBy(() -> FoldedBlank.angle(Double.NaN, 40, 300, 2))
        .hasMessageContaining("leg NaN is not between");
    assertThatThrownBy(() -> FoldedBlank.angle(40, 40, 300, -2))
        .hasMessageContaining("thickness -2");
    assertThatThrownBy(() -> BendAllowance.arcMm(90, 0, 2))
        .hasMessageContaining("inside bend radius 0");
    assertThatThrownBy(() -> BendAllowance.arcMm(90, 2, 0)).hasMessageContaining("thickness 0");
    assertThatThrownBy(() -> new RoundTube(20, 100, -1)).hasMessageContaining("thickness -1");
  }

  /** A leg of twice the thickness holds the bend; half a web counts as a leg of a channel. */
  @Test
  void aLegOfTwiceTheThicknessIsEnough() {
    assertThatCode(() -> FoldedBlank.angle(50, 4, 300, 2)).doesNotThrowAnyException();
    assertThatThrownBy(() -> FoldedBlank.angle(50, 3.9, 300, 2))
        .hasMessage(
            "leg 3.9 is not at least twice the thickness, 4.0 mm:"
                + " check the sizes, they are outside sizes");
    assertThatCode(() -> FoldedBlank.channel(8, 4, 300, 2)).doesNotThrowAnyException();
    assertThatThrownBy(() -> FoldedBlank.channel(7.8, 40, 300, 2))
        .hasMessageContaining("leg 3.9 is not at least");
    assertThatCode(() -> FoldedBlank.tray(8, 30, 4, 2)).doesNotThrowAnyException();
    assertThatThrownBy(() -> FoldedBlank.tray(30, 7.8, 40, 2))
        .hasMessageContaining("leg 3.9 is not at least");
  }

  /** A bend of 165 degrees is the last; a neutral fibre lies at most in the middle (r over 5 t). */
  @Test
  void bendsToTheirLimits() {
    double turned = Math.toRadians(165);
    assertThat(BendAllowance.arcMm(165, 2, 2)).isEqualTo(turned * 2.65, within(1e-12));
    assertThatThrownBy(() -> BendAllowance.arcMm(165.1, 2, 2))
        .hasMessageContaining("bend angle 165.1");
    assertThat(BendAllowance.arcMm(90, 100, 2)).isEqualTo(Math.PI / 2 * 101, within(1e-9));
  }

  @Test
  void aTubeOfHalfItsSizeIsABar() {
    assertThatThrownBy(() -> new RoundTube(20, 100, 10))
        .hasMessageContaining("smallest outside size, 10.0 mm");
  }

  @Test
  void theSentenceOfARefusalIsItsMessage() {
    ShapeException refused = new ShapeException("leg", 1.5, "at least 4 mm", "check it");

    assertThat(refused.sentence()).isEqualTo("leg 1.5 is not at least 4 mm: check it");
    assertThat(refused).hasMessage(refused.sentence());
  }

  @Test
  void workingsSayTheSum() {
    assertThat(
            new FlatPattern(9000, 420, 2, 110, 100, 0, Optional.empty()).measure(STEEL).working())
        .startsWith("two faces of 0.009 m2 net, cut length 0.42 m + cut edges");
    assertThat(new Solid(60000, 0, 1e6, 0, 0, new Box(100, 100, 100)).measure(STEEL).working())
        .doesNotContain("inner space");
  }
}
