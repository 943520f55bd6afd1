package spangle.coating.zinc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.coating.zinc.AstmA123.Category;
import spangle.measure.MeasureException;

class StandardsTest {

  /** ISO 1461:2009 Table 3: each edge on both sides. */
  @ParameterizedTest
  @CsvSource({
    "0.5,35,45,325",
    "1.49,35,45,325",
    "1.5,45,55,395",
    "3.0,45,55,395",
    "3.01,55,70,505",
    "6.0,55,70,505",
    "6.01,70,85,610",
    "40,70,85,610"
  })
  void isoSteel(double thicknessMm, double localUm, double meanUm, double tableGM2) {
    ZincRow row = Iso1461.steel(thicknessMm);
    assertThat(row.localUm()).isEqualTo(localUm);
    assertThat(row.meanUm()).isEqualTo(meanUm);
    assertThat(row.tableMassGM2()).hasValue(tableGM2);
    assertThat(row.coatingGM2()).isCloseTo(meanUm * 7.2, within(1e-9));
    assertThat(row.rule()).startsWith("ISO 1461:2009 Table 3, steel");
    assertThat(row.fromMemory()).isFalse();
  }

  /** ISO 1461:2009 Table 3, castings. */
  @ParameterizedTest
  @CsvSource({"5.99,60,70,505", "6,70,80,575", "20,70,80,575"})
  void isoCastings(double thicknessMm, double localUm, double meanUm, double tableGM2) {
    ZincRow row = Iso1461.casting(thicknessMm);
    assertThat(row.localUm()).isEqualTo(localUm);
    assertThat(row.meanUm()).isEqualTo(meanUm);
    assertThat(row.tableMassGM2()).hasValue(tableGM2);
    assertThat(row.rule()).contains("Table 3, casting");
  }

  /** ISO 1461:2009 Table 4, from memory; ISO 10684 gives the same 40/50 for threads. */
  @ParameterizedTest
  @CsvSource({"6,20,25,180", "6.01,40,50,360", "24,40,50,360"})
  void isoThreads(double diameterMm, double localUm, double meanUm, double tableGM2) {
    ZincRow row = Iso1461.threaded(diameterMm);
    assertThat(row.localUm()).isEqualTo(localUm);
    assertThat(row.meanUm()).isEqualTo(meanUm);
    assertThat(row.tableMassGM2()).hasValue(tableGM2);
    assertThat(row.fromMemory()).isTrue();
    assertThat(row.rule()).contains("Table 4, centrifuged, thread");
  }

  /** ISO 1461:2009 Table 4, from memory. */
  @ParameterizedTest
  @CsvSource({"2.99,35,45,325", "3,45,55,395", "8,45,55,395"})
  void isoSpun(double thicknessMm, double localUm, double meanUm, double tableGM2) {
    ZincRow row = Iso1461.spun(thicknessMm);
    assertThat(row.localUm()).isEqualTo(localUm);
    assertThat(row.meanUm()).isEqualTo(meanUm);
    assertThat(row.tableMassGM2()).hasValue(tableGM2);
    assertThat(row.fromMemory()).isTrue();
  }

  /** ASTM A123 (2024) Table 1, metric columns, each edge on both sides. */
  @ParameterizedTest
  @CsvSource({
    "SHAPE,1.59,45",
    "SHAPE,1.6,65",
    "SHAPE,3.19,65",
    "SHAPE,3.2,75",
    "SHAPE,4.8,75",
    "SHAPE,4.81,75",
    "SHAPE,6.39,75",
    "SHAPE,6.4,100",
    "SHAPE,16,100",
    "BAR,1.59,45",
    "BAR,1.6,65",
    "BAR,3.2,75",
    "BAR,6.4,75",
    "BAR,15.9,75",
    "BAR,16,100",
    "PLATE,1.59,45",
    "PLATE,1.6,65",
    "PLATE,3.19,65",
    "PLATE,3.2,75",
    "PLATE,15.99,75",
    "PLATE,16,100",
    "PIPE,1.59,45",
    "PIPE,3.19,45",
    "PIPE,3.2,75",
    "PIPE,20,75",
    "WIRE,1.59,35",
    "WIRE,1.6,50",
    "WIRE,3.2,60",
    "WIRE,4.8,60",
    "WIRE,4.81,65",
    "WIRE,6.4,80",
    "WIRE,16,80",
    "REBAR,6.4,100",
    "REBAR,16,100",
    "CASTING,4.81,100",
    "CASTING,16,100"
  })
  void astmMetricColumns(Category category, double thicknessMm, double grade) {
    assertThat(AstmA123.row(category, thicknessMm).meanUm()).isEqualTo(grade);
  }

  /** ASTM A123 (2024) Table 1, inch columns: 1/16, 1/8, 3/16, 1/4, 5/8 in on both sides. */
  @ParameterizedTest
  @CsvSource({
    "SHAPE,0.0624,45", "SHAPE,0.0625,65", "SHAPE,0.1249,65", "SHAPE,0.125,75", "SHAPE,0.2499,75",
    "SHAPE,0.25,100", "PLATE,0.6249,75", "PLATE,0.625,100", "WIRE,0.1875,60", "WIRE,0.1876,65"
  })
  void astmInchColumns(Category category, double thicknessIn, double grade) {
    assertThat(AstmA123.rowInches(category, thicknessIn).meanUm()).isEqualTo(grade);
  }

  @Test
  void exactInchSizesInMillimetresCountAsTheInchEdges() {
    assertThat(AstmA123.row(Category.PLATE, 1.5875).meanUm()).isEqualTo(65);
    assertThat(AstmA123.row(Category.PLATE, 3.175).meanUm()).isEqualTo(75);
    assertThat(AstmA123.row(Category.WIRE, 4.7625).meanUm()).isEqualTo(60);
    assertThat(AstmA123.row(Category.SHAPE, 6.35).meanUm()).isEqualTo(100);
    assertThat(AstmA123.row(Category.PLATE, 15.875).meanUm()).isEqualTo(100);
    assertThat(AstmA123.row(Category.PLATE, 3.17).meanUm()).isEqualTo(65);
  }

  /**
   * ASTM A123: one specimen may be one grade lower on the ladder 35 45 50 55 60 65 75 80 85 100.
   */
  @Test
  void theLocalMinimumIsTheNextLowerGrade() {
    assertThat(AstmA123.row(Category.PLATE, 5).localUm()).isEqualTo(65);
    assertThat(AstmA123.row(Category.PLATE, 20).localUm()).isEqualTo(85);
    assertThat(AstmA123.row(Category.PLATE, 2).localUm()).isEqualTo(60);
    assertThat(AstmA123.row(Category.PLATE, 1).localUm()).isEqualTo(35);
    assertThat(AstmA123.row(Category.WIRE, 1).localUm()).isEqualTo(35);
    assertThat(AstmA123.nextLower(80)).isEqualTo(75);
  }

  @Test
  void astmHasNoGradeForThinCastingsAndThinRebar() {
    assertThatThrownBy(() -> AstmA123.row(Category.CASTING, 4.8))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("4.8 mm")
        .hasMessageContaining("casting");
    assertThatThrownBy(() -> AstmA123.row(Category.REBAR, 6.3))
        .isInstanceOf(MeasureException.class);
  }

  /**
   * ASTM A123 conversion table: grade 75 is 2.95 mil, 1.74 oz/ft2, 530.0 g/m2; 650 g/m2 91.98 um.
   */
  @Test
  void astmConversions() {
    ZincRow row = AstmA123.row(Category.PLATE, 5);
    assertThat(row.coatingGM2()).isCloseTo(530.0, within(0.05));
    assertThat(row.meanUm() * AstmA123.MILS_PER_UM).isCloseTo(2.95, within(0.005));
    assertThat(row.meanUm() * AstmA123.OZ_FT2_PER_UM).isCloseTo(1.74, within(0.005));
    double um = 650 / AstmA123.GRAMS_PER_UM;
    assertThat(um).isCloseTo(91.98, within(0.005));
    assertThat(um * AstmA123.OZ_FT2_PER_UM).isCloseTo(2.13, within(0.005));
    assertThat(row.tableMassGM2()).isEmpty();
    assertThat(row.rule()).isEqualTo("ASTM A123 (2024) Table 1, plate over 4.8 to under 6.4 mm");
  }

  /** ASTM A153, 2016. */
  @Test
  void astmA153Classes() {
    assertThat(AstmA153.hardware(15.88, 382)).isEqualTo(AstmA153.B1);
    assertThat(AstmA153.hardware(15.87, 382)).isEqualTo(AstmA153.B2);
    assertThat(AstmA153.hardware(30, 381)).isEqualTo(AstmA153.B3);
    assertThat(AstmA153.fastener(9.53)).isEqualTo(AstmA153.C);
    assertThat(AstmA153.fastener(9.52)).isEqualTo(AstmA153.D);
    assertThat(AstmA153.washer(4.76)).isEqualTo(AstmA153.C);
    assertThat(AstmA153.washer(4.75)).isEqualTo(AstmA153.D);
    assertThat(AstmA153.B2.meanGM2()).isEqualTo(458);
    assertThat(AstmA153.B2.singleGM2()).isEqualTo(381);
    assertThat(AstmA153.C.meanUm()).isEqualTo(53);
    assertThat(AstmA153.C.singleUm()).isEqualTo(43);
    assertThatThrownBy(() -> AstmA153.hardware(0, 1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> AstmA153.hardware(1, 0)).isInstanceOf(MeasureException.class);
  }

  /** ASTM A153, 2016: the classes as rows; mass is the printed one, thickness the printed one. */
  @Test
  void astmA153AsRows() {
    ZincRow row = AstmA153.B3.row();
    assertThat(row.coatingGM2()).isCloseTo(397, within(1e-9));
    assertThat(row.tableMassGM2().orElseThrow()).isEqualTo(397);
    assertThat(row.meanUm()).isEqualTo(56);
    assertThat(row.localUm()).isEqualTo(48);
    assertThat(row.rule()).isEqualTo("ASTM A153 (2016) Table 1, class B-3");
    assertThat(AstmA153.D.row().rule()).endsWith("class D");
    assertThat(row.fromMemory()).isFalse();
  }

  /** The standard's own thickness and mass of each A153 class belong together. */
  @Test
  void astmA153MassesMatchTheirThickness() {
    for (AstmA153 each : AstmA153.values()) {
      assertThat(each.meanUm()).isCloseTo(each.meanGM2() / AstmA123.GRAMS_PER_UM, within(1.5));
      assertThat(each.singleUm()).isCloseTo(each.singleGM2() / AstmA123.GRAMS_PER_UM, within(1.5));
    }
  }

  @Test
  void refusesThicknessesThatAreNone() {
    assertThatThrownBy(() -> Iso1461.steel(0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Iso1461.casting(-1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Iso1461.threaded(0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Iso1461.spun(Double.NaN)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> AstmA123.row(Category.BAR, 0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> AstmA123.rowInches(Category.BAR, 0))
        .isInstanceOf(MeasureException.class);
  }

  @Property(tries = 200)
  void minimaNeverFallWithThickness(
      @ForAll @DoubleRange(min = 0.1, max = 30) double thinMm,
      @ForAll @DoubleRange(min = 0.1, max = 30) double thickMm) {
    double low = Math.min(thinMm, thickMm);
    double high = Math.max(thinMm, thickMm);
    assertThat(Iso1461.steel(low).meanUm()).isLessThanOrEqualTo(Iso1461.steel(high).meanUm());
    assertThat(Iso1461.steel(low).localUm()).isLessThan(Iso1461.steel(low).meanUm());
    assertThat(AstmA123.row(Category.PLATE, low).meanUm())
        .isLessThanOrEqualTo(AstmA123.row(Category.PLATE, high).meanUm());
  }
}
