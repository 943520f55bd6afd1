package spangle.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitiesTest {

  /** Exact factors of the 1959 international yard and pound agreement and NIST Handbook 44. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LENGTH | 120mm | 120",
        "LENGTH | 12 cm | 120",
        "LENGTH | 3 dm | 300",
        "LENGTH | 1,5 m | 1500",
        "LENGTH | 2.5 in | 63.5",
        "LENGTH | 2 1/2 in | 63.5",
        "LENGTH | 5/8\" | 15.875",
        "LENGTH | 2ft | 609.6",
        "FILM | 80um | 80",
        "FILM | 80 µm | 80",
        "FILM | 80 μm | 80",
        "FILM | 0.08 mm | 80",
        "FILM | 3 mil | 76.2",
        "MASS | 90 lb | 40.8233133",
        "MASS | 16 oz | 0.45359237",
        "MASS | 250 g | 0.25",
        "MASS | 1.2 t | 1200",
        "AREA | 12.5m2 | 12.5",
        "AREA | 12,5 m² | 12.5",
        "AREA | 100 ft2 | 9.290304",
        "AREA | 144 in2 | 0.09290304",
        "AREA | 5000 cm2 | 0.5",
        "AREA | 5000 mm2 | 0.005",
        "AREA | 50 dm2 | 0.5",
        "VOLUME | 1 gal | 3.785411784",
        "VOLUME | 1 ft3 | 28.316846592",
        "VOLUME | 250 ml | 0.25",
        "VOLUME | 2 m3 | 2000",
        "VOLUME | 5 l | 5",
        "TEMPERATURE | 400F | 204.444444444",
        "TEMPERATURE | -40 °F | -40",
        "TEMPERATURE | 20 °C | 20",
        "TEMPERATURE | 273.15K | 0",
        "TEMPERATURE_DIFFERENCE | 54F | 30",
        "TEMPERATURE_DIFFERENCE | 30 K | 30",
        "AIR_FLOW | 6000 m3/h | 6000",
        "AIR_FLOW | 100 m3/min | 6000",
        "AIR_FLOW | 2 m3/s | 7200",
        "AIR_FLOW | 1000cfm | 1699.01079552",
        "MASS_FLOW | 15 kg/h | 15",
        "MASS_FLOW | 250 g/min | 15",
        "MASS_FLOW | 10 lb/h | 4.5359237",
        "VOLUME_FLOW | 9 l/h | 9",
        "VOLUME_FLOW | 150 ml/min | 9",
        "VOLUME_FLOW | 1 l/min | 60",
        "VOLUME_FLOW | 1 gal/h | 3.785411784",
        "DURATION | 1.5 h | 90",
        "DURATION | 90s | 1.5",
        "DURATION | 2 days | 2880",
        "DURATION | 1e2min | 100",
      })
  void readsWhatPeopleWrite(QuantityKind kind, String text, double expected) {
    assertThat(Quantities.read(kind, text))
        .isCloseTo(expected, within(1e-9 * Math.max(1, expected)));
  }

  @Test
  void namedReadersUseTheirHouseUnit() {
    assertThat(Quantities.lengthMm("1in")).isCloseTo(25.4, within(1e-12));
    assertThat(Quantities.filmUm("1mil")).isCloseTo(25.4, within(1e-12));
    assertThat(Quantities.massKg("1t")).isEqualTo(1000);
    assertThat(Quantities.areaM2("1m2")).isEqualTo(1);
    assertThat(Quantities.litres("1m3")).isEqualTo(1000);
    assertThat(Quantities.celsius("32F")).isCloseTo(0, within(1e-9));
    assertThat(Quantities.read(QuantityKind.TEMPERATURE_DIFFERENCE, "9F"))
        .isCloseTo(5, within(1e-12));
    assertThat(Quantities.minutes("1h")).isEqualTo(60);
  }

  @ParameterizedTest
  @ValueSource(strings = {"12", "12.5 ", "-3", "1/2"})
  void refusesANumberWithoutUnit(String text) {
    assertThatThrownBy(() -> Quantities.lengthMm(text))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("add the unit, for example 120mm");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "mm",
        "abc",
        "1..2mm",
        "1,2,3mm",
        "NaN mm",
        "Infinity mm",
        "1/0 in",
        "12 34mm",
        "1e999mm",
        "--1mm"
      })
  void refusesWhatIsNoNumber(String text) {
    assertThatThrownBy(() -> Quantities.lengthMm(text)).isInstanceOf(MeasureException.class);
  }

  @Test
  void refusesTheWrongUnitAndNamesTheRightOnes() {
    assertThatThrownBy(() -> Quantities.lengthMm("12kg"))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("the unit 'kg' is not one of mm, cm");
  }

  @Test
  void refusesACommaThatMayMeanTwoThings() {
    assertThatThrownBy(() -> Quantities.lengthMm("1,250mm"))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("thousands");
    assertThat(Quantities.lengthMm("0,125mm")).isEqualTo(0.125);
    assertThat(Quantities.lengthMm("1,25mm")).isEqualTo(1.25);
  }

  @Test
  void refusesBelowZeroOnlyWhereItMakesNoSense() {
    assertThatThrownBy(() -> Quantities.massKg("-1kg")).hasMessageContaining("below zero");
    assertThatThrownBy(() -> Quantities.celsius("-300C")).hasMessageContaining("-273.15");
    assertThat(Quantities.celsius("-5C")).isEqualTo(-5);
    assertThat(Quantities.massKg("0kg")).isZero();
  }

  @Test
  void aColumnLendsItsUnitToBareNumbersOnly() {
    assertThat(Quantities.read(QuantityKind.LENGTH, "12", "mm")).isEqualTo(12);
    assertThat(Quantities.read(QuantityKind.LENGTH, "1 in", "mm")).isCloseTo(25.4, within(1e-12));
  }

  @Test
  void complaintKeepsItsPartsForFileReaders() {
    try {
      Quantities.lengthMm("12 furlong");
      throw new AssertionError("a furlong is not accepted");
    } catch (MeasureException complaint) {
      assertThat(complaint.value()).isEqualTo("12 furlong");
      assertThat(complaint.expected()).isEqualTo("a length");
      assertThat(complaint.remedy()).contains("furlong").contains("mm");
    }
  }

  @Test
  void readsSizes() {
    assertThat(Quantities.sizesMm("1000x500mm", 2)).containsExactly(1000.0, 500.0);
    assertThat(Quantities.sizesMm("3.7 x 1.1 × 1,9 m", 3)).containsExactly(3700.0, 1100.0, 1900.0);
    assertThat(Quantities.sizesMm("1m x 500mm", 2)).containsExactly(1000.0, 500.0);
    assertThat(Quantities.box("2x1x3cm")).isEqualTo(new Box(20, 10, 30));
  }

  @Test
  void refusesSizesOfTheWrongCountOrWithoutUnit() {
    assertThatThrownBy(() -> Quantities.sizesMm("1000x500mm", 3)).hasMessageContaining("3 sides");
    assertThatThrownBy(() -> Quantities.sizesMm("1000x500", 2)).hasMessageContaining("its unit");
    assertThatThrownBy(() -> Quantities.sizesMm("1mx5", 2)).hasMessageContaining("its unit");
    assertThatThrownBy(() -> Quantities.sizesMm("1000xmm", 2))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("'1000xmm' is not a size of 2 sides");
    assertThatThrownBy(() -> Quantities.sizesMm("long", 1))
        .hasMessageContaining("'long' is not a length");
    assertThatThrownBy(() -> Quantities.box("0x1x3cm")).isInstanceOf(MeasureException.class);
  }

  @Property(tries = 200)
  void unitsGoRoundTrip(@ForAll @DoubleRange(min = 0.01, max = 1e6) double inches) {
    double mm = QuantityKind.LENGTH.toHouseUnit(inches, "in").orElseThrow();
    assertThat(mm / 25.4).isCloseTo(inches, within(1e-9 * inches));
    double kelvin = QuantityKind.TEMPERATURE_DIFFERENCE.toHouseUnit(inches, "F").orElseThrow();
    assertThat(kelvin * 1.8).isCloseTo(inches, within(1e-9 * inches));
  }

  @Property(tries = 500)
  void anyTextIsReadOrRefusedInWords(@ForAll @StringLength(max = 260) String text) {
    try {
      assertThat(Quantities.lengthMm(text)).isNotNegative();
    } catch (MeasureException complaint) {
      assertThat(complaint).message().isNotBlank();
    }
  }

  /** A length in inches keeps its number, because some standards have rows of their own for it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"1/8in | 0.125", "2 1/2 inch | 2.5", "5/8\" | 0.625", "0.25 IN | 0.25"})
  void inchesAreKept(String text, double inches) {
    assertThat(Quantities.inches(text)).hasValue(inches);
  }

  @ParameterizedTest
  @ValueSource(strings = {"3mm", "1ft", "3", "in", "thin"})
  void whatIsNotInInchesHasNone(String text) {
    assertThat(Quantities.inches(text)).isEmpty();
  }
}
