package spangle.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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

class AreaMassCheckTest {
  private static final double STEEL = 7850;
  private static final Plate PLATE = new Plate(500, 400, 2);
  private static final Measured RIGHT = PLATE.measure(STEEL);

  private static Given shaped(double areaM2, double massKg, int pieces) {
    return shaped(PLATE, areaM2, massKg, pieces);
  }

  private static Given shaped(Shape shape, double areaM2, double massKg, int pieces) {
    return new Given(
        OptionalDouble.of(areaM2),
        OptionalDouble.of(massKg),
        OptionalDouble.empty(),
        Optional.empty(),
        STEEL,
        pieces,
        Optional.of(shape));
  }

  private static Given unshaped(double areaM2, double massKg, double thicknessMm, int pieces) {
    return new Given(
        OptionalDouble.of(areaM2),
        OptionalDouble.of(massKg),
        OptionalDouble.of(thicknessMm),
        Optional.empty(),
        STEEL,
        pieces,
        Optional.empty());
  }

  private static List<Trap> traps(Given given) {
    return AreaMassCheck.check(given).doubts().stream()
        .flatMap(doubt -> doubt.readings().stream())
        .map(Reading::trap)
        .distinct()
        .toList();
  }

  @Test
  void figuresThatAgreeAreNotDoubted() {
    Agreement agreement = AreaMassCheck.check(shaped(RIGHT.areaM2(), RIGHT.massKg(), 20));
    assertThat(agreement.verdict()).isEqualTo(Verdict.AGREES);
    assertThat(agreement.doubts()).isEmpty();
  }

  /** Ten and fifty per cent are still allowed; a little more is not. Area 0.4 m2 to 0.4036 m2. */
  @ParameterizedTest
  @CsvSource({
    "1.0999, AGREES",
    "1.1001, ASK",
    "1.4999, ASK",
    "1.5001, BLOCK",
    "0.9092, AGREES",
    "0.9090, ASK",
    "0.6668, ASK",
    "0.6666, BLOCK"
  })
  void theLimitsAreTenAndFiftyPerCentOfTheSmaller(double factor, Verdict verdict) {
    Given byMass = shaped(RIGHT.areaM2(), RIGHT.massKg() * factor, 1);
    assertThat(AreaMassCheck.check(byMass).verdict()).isEqualTo(verdict);
    double nearest = factor > 1 ? RIGHT.areaM2() : 0.4;
    Given byArea = shaped(nearest * factor, RIGHT.massKg(), 1);
    assertThat(AreaMassCheck.check(byArea).verdict()).isEqualTo(verdict);
    // 6.28 kg of 2 mm steel have 0.8 m2 on their faces.
    Given byEachOther = unshaped(0.8 * factor, 6.28, 2, 1);
    assertThat(AreaMassCheck.check(byEachOther).verdict()).isEqualTo(verdict);
  }

  @Test
  void leavingOutTheEdgesIsNoFault() {
    Plate thick = new Plate(30, 30, 10);
    double withoutEdges = thick.measure(STEEL, Edges.IGNORED).areaM2();
    double withEdges = thick.measure(STEEL).areaM2();
    double mass = thick.measure(STEEL).massKg();
    assertThat(AreaMassCheck.check(shaped(thick, withoutEdges, mass, 1)).verdict())
        .isEqualTo(Verdict.AGREES);
    assertThat(AreaMassCheck.check(shaped(thick, withEdges, mass, 1)).verdict())
        .isEqualTo(Verdict.AGREES);
    Given boxed =
        new Given(
            OptionalDouble.of(withEdges),
            OptionalDouble.of(mass),
            OptionalDouble.of(10),
            Optional.of(new Box(10, 30, 30)),
            STEEL,
            1,
            Optional.empty());
    assertThat(AreaMassCheck.check(boxed).verdict()).isEqualTo(Verdict.AGREES);
    assertThat(AreaMassCheck.check(unshaped(withEdges, mass, 10, 1)).verdict())
        .isEqualTo(Verdict.BLOCK);
  }

  @Test
  void oneFaceIsRecognised() {
    assertThat(traps(shaped(RIGHT.areaM2() / 2, RIGHT.massKg(), 1))).containsExactly(Trap.ONE_FACE);
    assertThat(traps(unshaped(0.4, 6.28, 2, 1))).contains(Trap.ONE_FACE);
  }

  @Test
  void areaOrMassOfTheWholeJobIsRecognised() {
    assertThat(traps(shaped(RIGHT.areaM2() * 30, RIGHT.massKg(), 30)))
        .containsExactly(Trap.AREA_PER_JOB);
    assertThat(traps(shaped(RIGHT.areaM2(), RIGHT.massKg() * 30, 30)))
        .containsExactly(Trap.MASS_PER_JOB);
    assertThat(traps(unshaped(0.8 * 30, 6.28, 2, 30))).containsExactly(Trap.AREA_PER_JOB);
    assertThat(traps(unshaped(0.8, 6.28 * 30, 2, 30))).contains(Trap.MASS_PER_JOB);
  }

  @Test
  void poundsAndGramsAreRecognised() {
    assertThat(traps(shaped(RIGHT.areaM2(), RIGHT.massKg() / 0.45359237, 1)))
        .containsExactly(Trap.POUNDS);
    assertThat(traps(shaped(RIGHT.areaM2(), RIGHT.massKg() * 1000, 1))).containsExactly(Trap.GRAMS);
    assertThat(traps(unshaped(0.8, 6.28 / 0.45359237, 2, 1))).contains(Trap.POUNDS);
    assertThat(traps(unshaped(0.8, 6280, 2, 1))).containsExactly(Trap.GRAMS);
  }

  /** 2.2046 and 2 lie within ten per cent of each other: both readings are shown. */
  @Test
  void whereTwoReadingsFitBothAreShown() {
    assertThat(traps(unshaped(0.8, 6.28 * 2.1, 2, 1))).containsExactly(Trap.ONE_FACE, Trap.POUNDS);
  }

  @Test
  void squareFeetAreRecognised() {
    assertThat(traps(shaped(RIGHT.areaM2() / 0.09290304, RIGHT.massKg(), 1)))
        .containsExactly(Trap.SQUARE_FEET);
  }

  /**
   * A 160 x 120 x 2 mm plate whose sizes were inches: because of its edges the area is some 381
   * times the one read, not 645 times.
   */
  @Test
  void inchesReadAsMillimetresAreRecognised() {
    Plate asRead = new Plate(160 / 25.4, 120 / 25.4, 2);
    Measured true160 = new Plate(160, 120, 2).measure(STEEL);
    assertThat(true160.areaM2() / asRead.measure(STEEL).areaM2()).isBetween(381.0, 382.0);
    Agreement agreement =
        AreaMassCheck.check(shaped(asRead, true160.areaM2(), true160.massKg(), 1));
    assertThat(agreement.verdict()).isEqualTo(Verdict.BLOCK);
    assertThat(agreement.doubts()).hasSize(2);
    // The mass is 645 times too small, the area 381 times: the worse comes first.
    assertThat(agreement.doubts().get(0).words()).startsWith("mass 0.3014 kg is written");
    for (Doubt doubt : agreement.doubts()) {
      assertThat(doubt.readings().stream().map(Reading::trap)).containsExactly(Trap.INCHES);
      assertThat(doubt.readings().get(0).words())
          .isEqualTo(
              "as written it is 6.3 x 4.7 x 2 mm, 0.00010361 m2;"
                  + " if in inches 160 x 120 x 2 mm, 0.03952 m2");
    }
  }

  @Test
  void aThicknessInInchesIsRecognised() {
    assertThat(traps(unshaped(0.8, 6.28, 2 / 25.4, 1))).containsExactly(Trap.THICKNESS_IN_INCHES);
  }

  @Test
  void theOtherMetalIsRecognised() {
    double aluminiumMass = PLATE.measure(2700).massKg();
    assertThat(traps(shaped(RIGHT.areaM2(), aluminiumMass, 1)))
        .containsExactly(Trap.ALUMINIUM_AFTER_ALL);
    assertThat(traps(unshaped(0.8, 0.4 * 2 * 2.7, 2, 1))).containsExactly(Trap.ALUMINIUM_AFTER_ALL);
    Given written =
        new Given(
            OptionalDouble.empty(),
            OptionalDouble.of(RIGHT.massKg()),
            OptionalDouble.empty(),
            Optional.empty(),
            2700,
            1,
            Optional.of(PLATE));
    assertThat(traps(written)).containsExactly(Trap.STEEL_AFTER_ALL);
  }

  @Test
  void bothFiguresAndTheirDistanceAreSaid() {
    Doubt doubt = AreaMassCheck.check(unshaped(0.4, 6.28, 2, 1)).doubts().get(0);
    assertThat(doubt.words())
        .isEqualTo("area 0.4 m2 is written, its mass and thickness give 0.8 m2: 100 % apart");
    assertThat(doubt.readings())
        .contains(new Reading(Trap.ONE_FACE, "as written 0.4 m2, then 0.8 m2"));
    Doubt other = AreaMassCheck.check(shaped(0.8072, RIGHT.massKg(), 1)).doubts().get(0);
    assertThat(other.words())
        .isEqualTo("area 0.8072 m2 is written, its shape gives 0.4036 m2: 100 % apart");
    assertThat(other.readings()).isEmpty();
  }

  @Test
  void whatIsMissingIsNotDoubted() {
    Given nothing =
        new Given(
            OptionalDouble.of(1),
            OptionalDouble.empty(),
            OptionalDouble.of(2),
            Optional.empty(),
            STEEL,
            1,
            Optional.empty());
    assertThat(AreaMassCheck.check(nothing).verdict()).isEqualTo(Verdict.AGREES);
    Given noThickness =
        new Given(
            OptionalDouble.of(1),
            OptionalDouble.of(100),
            OptionalDouble.empty(),
            Optional.empty(),
            STEEL,
            1,
            Optional.empty());
    assertThat(AreaMassCheck.check(noThickness).verdict()).isEqualTo(Verdict.AGREES);
    Given noArea =
        new Given(
            OptionalDouble.empty(),
            OptionalDouble.of(100),
            OptionalDouble.of(2),
            Optional.empty(),
            STEEL,
            1,
            Optional.empty());
    assertThat(AreaMassCheck.check(noArea).verdict()).isEqualTo(Verdict.AGREES);
  }

  /** 50 m in inches would be over a kilometre: then there is no such reading, and no failure. */
  @Test
  void aReadingThatCannotExistIsNotOffered() {
    Plate strip = new Plate(50_000, 100, 2);
    Measured measured = strip.measure(STEEL);
    assertThat(traps(shaped(strip, measured.areaM2() * 645, measured.massKg() * 645, 1)))
        .doesNotContain(Trap.INCHES);
  }

  @Test
  void figuresOfThisWorldOnly() {
    assertThatThrownBy(() -> unshaped(0, 1, 2, 1)).hasMessageContaining("area 0");
    assertThatThrownBy(() -> unshaped(1, -1, 2, 1)).hasMessageContaining("mass -1");
    assertThatThrownBy(() -> unshaped(1, 1, 0, 1)).hasMessageContaining("thickness 0");
    assertThatThrownBy(() -> unshaped(1, 1, 1, 0)).hasMessageContaining("number of pieces 0");
    assertThat(Trap.POUNDS.supposing()).isEqualTo("the mass is in pounds");
  }
}
