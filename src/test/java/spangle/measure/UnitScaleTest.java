package spangle.measure;

import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/** Every customary factor against the unit library's, and values that are exact on paper. */
class UnitScaleTest {
  private static final Map<UnitScale, Double> LIBRARY =
      Map.ofEntries(
          Map.entry(UnitScale.INCH_TO_MM, library(USCustomary.INCH, MILLI(Units.METRE))),
          Map.entry(UnitScale.FOOT_TO_MM, library(USCustomary.FOOT, MILLI(Units.METRE))),
          Map.entry(
              UnitScale.SQUARE_FOOT_TO_M2, library(USCustomary.SQUARE_FOOT, Units.SQUARE_METRE)),
          Map.entry(UnitScale.CUBIC_FOOT_TO_LITRE, library(USCustomary.CUBIC_FOOT, Units.LITRE)),
          Map.entry(UnitScale.POUND_TO_KG, library(USCustomary.POUND, Units.KILOGRAM)),
          Map.entry(UnitScale.OUNCE_TO_KG, library(USCustomary.OUNCE, Units.KILOGRAM)),
          Map.entry(UnitScale.GALLON_TO_LITRE, library(USCustomary.GALLON_LIQUID, Units.LITRE)),
          Map.entry(
              UnitScale.FAHRENHEIT_TO_CELSIUS, library(USCustomary.FAHRENHEIT, Units.CELSIUS)),
          Map.entry(
              UnitScale.FAHRENHEIT_STEP_TO_KELVIN, library(USCustomary.RANKINE, Units.KELVIN)));

  /** What the library makes of 77. */
  private static <Q extends javax.measure.Quantity<Q>> double library(Unit<Q> from, Unit<Q> to) {
    return from.getConverterTo(to).convert(77.0);
  }

  @Test
  void agreesWithTheUnitLibrary() {
    LIBRARY.forEach(
        (scale, expected) ->
            assertThat(scale.toHouseUnit(77)).isCloseTo(expected, within(1e-12 * expected)));
  }

  @Test
  void theDerivedFactorsFollowFromTheInchAndTheFoot() {
    assertThat(UnitScale.MIL_TO_UM.toHouseUnit(1000))
        .isEqualTo(USCustomary.INCH.getConverterTo(MICRO(Units.METRE)).convert(1.0));
    assertThat(UnitScale.SQUARE_INCH_TO_M2.toHouseUnit(144))
        .isEqualTo(UnitScale.SQUARE_FOOT_TO_M2.toHouseUnit(1));
    assertThat(UnitScale.CUBIC_FOOT_TO_M3_A_MINUTE.toHouseUnit(1000))
        .isEqualTo(UnitScale.CUBIC_FOOT_TO_LITRE.toHouseUnit(60));
  }

  /** The edges of tables in inches fall on the millimetre they stand for. */
  @Test
  void inchFractionsAreExact() {
    assertThat(Quantities.lengthMm("1/16in")).isEqualTo(1.5875);
    assertThat(Quantities.lengthMm("1/8in")).isEqualTo(3.175);
    assertThat(Quantities.lengthMm("3/16in")).isEqualTo(4.7625);
    assertThat(Quantities.lengthMm("1/4in")).isEqualTo(6.35);
    assertThat(Quantities.lengthMm("5/8in")).isEqualTo(15.875);
    assertThat(Quantities.celsius("212F")).isEqualTo(100);
    assertThat(Quantities.celsius("0K")).isEqualTo(-273.15);
  }
}
