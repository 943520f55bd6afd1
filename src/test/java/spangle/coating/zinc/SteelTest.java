package spangle.coating.zinc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.measure.LowLikelyHigh;
import spangle.measure.MeasureException;

class SteelTest {

  /** ISO 14713-2 Table 1, each edge on both sides; what fits no row counts as C. */
  @ParameterizedTest
  @CsvSource({
    "0.02,0.01,A", "0.04,0.019,A", "0.04,0.02,C", "0.041,0.01,C", "0.14,0.01,C", "0.141,0.01,B",
    "0.25,0.034,B", "0.25,0.035,C", "0.251,0.01,D", "0.251,0.05,D", "0.4,0.01,D", "0,0,A"
  })
  void isoCategories(double siPct, double pPct, SteelClass expected) {
    assertThat(SteelReactivity.of(SteelChemistry.of(siPct, pPct)).steelClass()).isEqualTo(expected);
  }

  /** ISO 1461:2022: Si up to 0.01 % and Al over 0.035 %. */
  @ParameterizedTest
  @CsvSource({
    "0.01,0.01,0.036,ULTRA_LOW",
    "0.01,0.01,0.035,A",
    "0.011,0.01,0.036,A",
    "0.01,0.02,0.036,C"
  })
  void ultraLowSilicon(double siPct, double pPct, double alPct, SteelClass expected) {
    SteelReactivity steel = SteelReactivity.of(SteelChemistry.of(siPct, pPct, alPct));
    assertThat(steel.steelClass()).isEqualTo(expected);
  }

  @Test
  void ultraLowSiliconWarnsThatTheMinimumMayBeMissed() {
    SteelReactivity certain = SteelReactivity.of(SteelChemistry.of(0.01, 0.01, 0.04));
    assertThat(certain.warnings()).singleElement().asString().contains("may miss");
    assertThat(certain.questions()).isEmpty();
    SteelReactivity doubtful = SteelReactivity.of(SteelChemistry.of(0.01, 0.01));
    assertThat(doubtful.steelClass()).isEqualTo(SteelClass.A);
    assertThat(doubtful.warnings()).singleElement().asString().contains("laser-grade");
    assertThat(doubtful.questions()).singleElement().asString().contains("aluminium");
    SteelReactivity plain = SteelReactivity.of(SteelChemistry.of(0.02, 0.01));
    assertThat(plain.warnings()).isEmpty();
    assertThat(plain.questions()).isEmpty();
    assertThat(SteelReactivity.of(SteelChemistry.of(0.01, 0.01, 0.02)).questions()).isEmpty();
  }

  @Test
  void brittleCoatingsAreSaid() {
    assertThat(SteelReactivity.of(SteelChemistry.of(0.08, 0.01)).warnings())
        .singleElement()
        .asString()
        .contains("very thick, rough, darker")
        .contains("chips");
    assertThat(SteelReactivity.of(SteelChemistry.of(0.3, 0.01)).warnings())
        .singleElement()
        .asString()
        .contains("thick, grey");
    assertThat(SteelClass.B.brittle()).isFalse();
    assertThat(SteelClass.C.look()).contains("chips");
  }

  @Test
  void anUnknownCertificateAsksAndGuessesWide() {
    SteelReactivity none = SteelReactivity.of(SteelChemistry.UNKNOWN);
    assertThat(none.steelClass()).isEqualTo(SteelClass.UNKNOWN);
    assertThat(none.questions()).singleElement().asString().contains("silicon and phosphorus");
    assertThat(none.research()).isEmpty();
    assertThat(none.insideA385()).isEmpty();
    assertThat(SteelClass.UNKNOWN.growth()).isEqualTo(new LowLikelyHigh(1.0, 1.5, 3.0));

    OptionalDouble empty = OptionalDouble.empty();
    SteelReactivity siOnly =
        SteelReactivity.of(new SteelChemistry(OptionalDouble.of(0.02), empty, empty));
    assertThat(siOnly.steelClass()).isEqualTo(SteelClass.UNKNOWN);
    assertThat(siOnly.questions()).singleElement().asString().contains("of phosphorus");
    SteelReactivity pOnly =
        SteelReactivity.of(new SteelChemistry(empty, OptionalDouble.of(0.02), empty));
    assertThat(pOnly.steelClass()).isEqualTo(SteelClass.UNKNOWN);
    assertThat(pOnly.questions()).singleElement().asString().contains("of silicon");
  }

  @Test
  void siliconAloneSettlesTheReactiveRanges() {
    OptionalDouble empty = OptionalDouble.empty();
    assertThat(
            SteelReactivity.of(new SteelChemistry(OptionalDouble.of(0.08), empty, empty))
                .steelClass())
        .isEqualTo(SteelClass.C);
    assertThat(
            SteelReactivity.of(new SteelChemistry(OptionalDouble.of(0.3), empty, empty))
                .steelClass())
        .isEqualTo(SteelClass.D);
  }

  /** Eight-class research table (ILZRO, Cardiff). */
  @ParameterizedTest
  @CsvSource({
    "0.035,0.025,1", "0.036,0.025,2", "0.035,0.026,2", "0.04,0.035,2", "0.04,0.036,3",
    "0.041,0.01,4a", "0.041,0.011,4b", "0.135,0.01,4a", "0.136,0.03,5a", "0.136,0.031,5b",
    "0.35,0.01,5a", "0.351,0.01,6"
  })
  void eightClasses(double siPct, double pPct, String expected) {
    assertThat(SteelReactivity.of(SteelChemistry.of(siPct, pPct)).research()).contains(expected);
  }

  /** ASTM A385: Si under 0.04 or 0.15 to 0.22, P under 0.04, Si + 2.5 P in the same windows. */
  @ParameterizedTest
  @CsvSource({
    "0.01,0.01,true", "0.039,0.0003,true", "0.04,0,false", "0.15,0.01,true", "0.149,0.01,false",
    "0.19,0.012,true", "0.19,0.013,false", "0.22,0,true", "0.221,0,false", "0.01,0.04,false",
    "0.15,0.028,true", "0.06,0.039,false"
  })
  void a385Windows(double siPct, double pPct, boolean expected) {
    assertThat(SteelReactivity.of(SteelChemistry.of(siPct, pPct)).insideA385()).contains(expected);
  }

  /** Growth factors by class, common practice. */
  @Test
  void growthFactors() {
    assertThat(SteelClass.ULTRA_LOW.growth()).isEqualTo(new LowLikelyHigh(0.8, 0.9, 1.0));
    assertThat(SteelClass.A.growth()).isEqualTo(new LowLikelyHigh(1.1, 1.2, 1.3));
    assertThat(SteelClass.B.growth()).isEqualTo(new LowLikelyHigh(1.4, 1.6, 1.8));
    assertThat(SteelClass.C.growth()).isEqualTo(new LowLikelyHigh(1.8, 2.3, 3.0));
    assertThat(SteelClass.D.growth()).isEqualTo(new LowLikelyHigh(1.6, 2.0, 2.5));
    assertThat(SteelClass.ULTRA_LOW.word()).isEqualTo("ultra-low");
  }

  @Test
  void refusesImpossibleCertificates() {
    assertThatThrownBy(() -> SteelChemistry.of(-0.1, 0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> SteelChemistry.of(6, 0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> SteelChemistry.of(0, 1.1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> SteelChemistry.of(0, 0, 5.1)).isInstanceOf(MeasureException.class);
  }
}
