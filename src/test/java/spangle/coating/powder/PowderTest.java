package spangle.coating.powder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.measure.LowLikelyHigh;
import spangle.measure.MeasureException;

class PowderTest {
  private static PowderNeed need(double areaM2, double filmUm, double sg, double use) {
    return new PowderNeed(areaM2, 0, filmUm, sg, use, 0);
  }

  /** A published powder-coating answer: SG 1.6, 75 um, 60 %: 120 g/m2, 8.33 and 5.00 m2/kg. */
  @Test
  void coverageAsPublished() {
    PowderNeed need = need(1, 75, 1.6, 0.6);
    assertThat(need.filmGM2()).isCloseTo(120, within(1e-9));
    assertThat(need.coverageM2Kg()).isCloseTo(8.33, within(0.005));
    assertThat(need.areaM2() / need.sprayedKg()).isCloseTo(5.00, within(0.001));
    assertThat(need.filmKg()).isCloseTo(0.120, within(1e-9));
  }

  /**
   * A published coverage note, 192.3 / (SG x mil): 60.1 ft2/lb at 2 mil and SG 1.6; 30.05 at 50 %.
   */
  @Test
  void coverageInFeetAndPounds() {
    PowderNeed need = need(1, 50.8, 1.6, 0.5);
    assertThat(need.coverageFt2Lb()).isCloseTo(60.1, within(0.3));
    assertThat(need.coverageFt2Lb() * need.use()).isCloseTo(30.05, within(0.15));
  }

  /** Arithmetic of the same note: 12000 / 62.4 and 1000 / 25.4; a printed 39.8 is wrong. */
  @Test
  void constantsOfCoverage() {
    assertThat(PowderNeed.FT2_MIL_LB).isCloseTo(192.31, within(0.005));
    assertThat(PowderNeed.M2_MIL_KG).isCloseTo(39.37, within(0.005)).isLessThan(39.5);
    assertThat(need(1, 25.4, 1, 1).coverageM2Kg()).isCloseTo(PowderNeed.M2_MIL_KG, within(1e-9));
  }

  /** Hand sum: 300 brackets, hooks of 4 mm wire 300 mm long, 1 kg for the colour: 2.39 kg. */
  @Test
  void hooksAndTheColourDoubleSmallWork() {
    PowderNeed need = new PowderNeed(300 * 0.016942, 300 * 0.00377, 70, 1.6, 0.50, 1.0);
    assertThat(need.filmKg()).isCloseTo(0.696, within(0.001));
    assertThat(need.sprayedKg()).isCloseTo(1.392, within(0.001));
    assertThat(need.toDrawKg()).isCloseTo(2.39, within(0.005));
    double alone = need(300 * 0.016942, 70, 1.6, 0.50).toDrawKg();
    assertThat(need.toDrawKg() / alone).isCloseTo(2.1, within(0.02));
  }

  @Test
  void packsAreWhole() {
    assertThat(new PowderNeed(100, 0, 80, 1.5, 0.6, 0).packs(20)).isEqualTo(1);
    assertThat(new PowderNeed(100, 0, 80, 1.5, 0.6, 0.001).packs(20)).isEqualTo(2);
    assertThatThrownBy(() -> need(1, 80, 1.5, 0.6).packs(0)).isInstanceOf(MeasureException.class);
  }

  @Test
  void theRangeStandsAboutTheLikelyDraw() {
    PowderNeed need = new PowderNeed(100, 0, 80, 1.5, 0.6, 1);
    LowLikelyHigh about = need.toDrawRangeKg();
    assertThat(about.low()).isCloseTo(0.85 * 20 + 1, within(1e-9));
    assertThat(about.likely()).isCloseTo(need.toDrawKg(), within(1e-9));
    assertThat(about.high()).isCloseTo(1.25 * 20 + 1, within(1e-9));
    LowLikelyHigh byUse = need.toDrawRangeKg(new LowLikelyHigh(0.5, 0.6, 0.75));
    assertThat(byUse.low()).isCloseTo(12 / 0.75 + 1, within(1e-9));
    assertThat(byUse.likely()).isCloseTo(21, within(1e-9));
    assertThat(byUse.high()).isCloseTo(25, within(1e-9));
  }

  /** Order of the forms as published, ranges from memory. */
  @Test
  void formsFromPanelToWire() {
    double before = 1;
    for (PartShape shape : PartShape.values()) {
      assertThat(shape.firstPass().likely()).isLessThan(before);
      before = shape.firstPass().likely();
    }
    assertThat(PartShape.PANEL.firstPass()).isEqualTo(new LowLikelyHigh(0.60, 0.68, 0.75));
    assertThat(PartShape.WIRE.firstPass()).isEqualTo(new LowLikelyHigh(0.20, 0.30, 0.40));
    assertThat(PartShape.BRACKET.word()).isEqualTo("bracket");
  }

  /** Steady-state reclaim, U = e / (1 - r (1 - e)) (arithmetic). */
  @ParameterizedTest
  @CsvSource({"0.6,0.9,0.9375", "0.5,0.9,0.909", "0.6,0.95,0.968", "0.6,0,0.6", "0.6,1,1"})
  void steadyStateOfReclaim(double firstPass, double capture, double use) {
    assertThat(new Reclaim(firstPass, capture).use()).isCloseTo(use, within(0.0005));
  }

  /** Published: shops with reclaim really reach 65 to 85 %. */
  @Test
  void reclaimBeyondPracticeIsSaid() {
    assertThat(new Reclaim(0.6, 0.9).beyondPractice()).isTrue();
    assertThat(new Reclaim(0.6, 0.5).beyondPractice()).isFalse();
    assertThatThrownBy(() -> new Reclaim(0, 0.5)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new Reclaim(0.5, -0.1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new Reclaim(0.5, 1.1)).isInstanceOf(MeasureException.class);
    assertThat(new Reclaim(0.5, 1).use()).isEqualTo(1);
  }

  @Property(tries = 200)
  void reclaimNeverFallsWithItsShares(
      @ForAll @DoubleRange(min = 0.05, max = 0.99) double first,
      @ForAll @DoubleRange(min = 0, max = 0.99) double capture) {
    double use = new Reclaim(first, capture).use();
    assertThat(use).isBetween(first - 1e-12, 1.0);
    assertThat(new Reclaim(first, capture + 0.01).use()).isGreaterThanOrEqualTo(use);
    assertThat(new Reclaim(first + 0.01, capture).use()).isGreaterThanOrEqualTo(use);
  }

  /**
   * Published case: 200 lb sprayed at 60 %, powder at 2.50 a lb, all overspray caught, against 150
   * for a clean-out: 80 lb or 200 saved, hardly more than it costs.
   */
  @Test
  void reclaimPaysJustInThePublishedCase() {
    double lbFilm = 200 * 0.6;
    // one "m2" stands for one lb of film, so that money per kg and per lb do not matter
    ReclaimAdvice advice =
        ReclaimAdvice.of(
            lbFilm, 1000, new Reclaim(0.6, 1), new ReclaimAdvice.Costs(2.50, 300, 15, 2, 0));
    assertThat(advice.savedKgM2() * lbFilm).isCloseTo(80, within(1e-6));
    assertThat(advice.cleaningCost()).isCloseTo(150, within(1e-9));
    assertThat(advice.breakEvenM2()).isCloseTo(lbFilm * 150 / 200, within(1e-6));
    assertThat(advice.verdict()).isEqualTo(ReclaimAdvice.Verdict.RECLAIM);
  }

  /** Hand sum: saves 0.12 x (1/0.6 - 1/0.9375) = 0.072 kg/m2 at 5 = 0.36; costs 18: 50 m2. */
  @ParameterizedTest
  @CsvSource({
    "37.4,SPRAY_TO_WASTE",
    "37.6,EITHER",
    "50,EITHER",
    "62.4,EITHER",
    "62.6,RECLAIM",
    "500,RECLAIM"
  })
  void adviceByArea(double areaM2, ReclaimAdvice.Verdict verdict) {
    ReclaimAdvice advice =
        ReclaimAdvice.of(
            areaM2, 120, new Reclaim(0.6, 0.9), new ReclaimAdvice.Costs(5, 24, 20, 1, 2));
    assertThat(advice.cleaningCost()).isCloseTo(18, within(1e-9));
    assertThat(advice.breakEvenM2()).isCloseTo(50, within(1e-6));
    assertThat(advice.verdict()).isEqualTo(verdict);
    assertThat(verdict.words()).isNotBlank();
  }

  @Test
  void whatSavesNothingNeverPays() {
    ReclaimAdvice none =
        ReclaimAdvice.of(1e5, 120, new Reclaim(0.6, 0), new ReclaimAdvice.Costs(5, 24, 20, 2, 0));
    assertThat(none.breakEvenM2()).isInfinite();
    assertThat(none.verdict()).isEqualTo(ReclaimAdvice.Verdict.SPRAY_TO_WASTE);
    ReclaimAdvice.Costs costs = new ReclaimAdvice.Costs(5, 24, 20, 2, 0);
    Reclaim reclaim = new Reclaim(0.6, 0.9);
    assertThatThrownBy(() -> ReclaimAdvice.of(0, 120, reclaim, costs))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> ReclaimAdvice.of(1, 0, reclaim, costs))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ReclaimAdvice.Costs(0, 1, 1, 1, 1))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ReclaimAdvice.Costs(1, -1, 1, 1, 1))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ReclaimAdvice.Costs(1, 1, -1, 1, 1))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ReclaimAdvice.Costs(1, 1, 1, 0, 1))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ReclaimAdvice.Costs(1, 1, 1, 1, -1))
        .isInstanceOf(MeasureException.class);
  }

  /** Usual limit 10 g/m3: 2 guns of 15 kg/h in 6000 m3/h keep it, 3 in 4000 m3/h do not. */
  @Test
  void dustInTheBooth() {
    BoothDust fine = new BoothDust(2 * 15, 6000);
    assertThat(fine.gramsM3()).isCloseTo(5.0, within(1e-9));
    assertThat(fine.withinUsualLimit()).isTrue();
    BoothDust much = new BoothDust(3 * 15, 4000);
    assertThat(much.gramsM3()).isCloseTo(11.25, within(1e-9));
    assertThat(much.withinUsualLimit()).isFalse();
    assertThat(much.airNeededM3H()).isCloseTo(4500, within(1e-9));
    assertThat(new BoothDust(45, 4500).withinUsualLimit()).isTrue();
    assertThat(fine.withinLel(10)).isTrue();
    assertThat(fine.withinLel(9.99)).isFalse();
    assertThatThrownBy(() -> fine.withinLel(0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new BoothDust(0, 1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new BoothDust(1, 0)).isInstanceOf(MeasureException.class);
  }

  @Property(tries = 200)
  void powderAddsUpOverParts(
      @ForAll @DoubleRange(min = 0.01, max = 500) double one,
      @ForAll @DoubleRange(min = 0.01, max = 500) double other,
      @ForAll @DoubleRange(min = 20, max = 200) double film) {
    double apart = need(one, film, 1.5, 0.6).toDrawKg() + need(other, film, 1.5, 0.6).toDrawKg();
    assertThat(need(one + other, film, 1.5, 0.6).toDrawKg()).isCloseTo(apart, within(1e-9 * apart));
    assertThat(need(one, film + 1, 1.5, 0.6).toDrawKg())
        .isGreaterThan(need(one, film, 1.5, 0.6).toDrawKg());
  }

  @Test
  void refusesWhatIsNoPowder() {
    assertThatThrownBy(() -> need(0, 80, 1.5, 0.6)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> need(1, 0, 1.5, 0.6)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> need(1, 80, 0, 0.6)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> need(1, 80, 1.5, 0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> need(1, 80, 1.5, 1.01)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> need(1, 80, 1.5, Double.NaN)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> need(Double.POSITIVE_INFINITY, 80, 1.5, 0.6))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new PowderNeed(1, -1, 80, 1.5, 0.6, 0))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new PowderNeed(1, 0, 80, 1.5, 0.6, -1))
        .isInstanceOf(MeasureException.class);
    assertThat(need(1, 80, 1.5, 1).sprayedKg()).isEqualTo(need(1, 80, 1.5, 1).filmKg());
  }
}
