package spangle.coating.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.measure.Interval;
import spangle.measure.MeasureException;

class LiquidTest {
  private static final MixRatio FOUR_TO_ONE =
      new MixRatio(List.of(4.0, 1.0), MixRatio.Basis.VOLUME, List.of());

  private static PaintNeed need(double filmUm, double solids, double thinner, double loss) {
    return new PaintNeed(100, filmUm, solids, thinner, loss);
  }

  /** A published coating tech note: 71 % solids, 125 um dry: 176 um wet, 5.68 m2/l. */
  @Test
  void wetFilmAndSpreading() {
    PaintNeed need = need(125, 71, 0, 0);
    assertThat(need.wetFilmUm()).isCloseTo(176, within(0.5));
    assertThat(need.spreadingM2L()).isCloseTo(5.68, within(0.005));
  }

  /** A published coverage text: 65 % solids, 5 mil: 208.52 ft2/gal (1604 solids / mil). */
  @Test
  void spreadingInFeetAndGallons() {
    assertThat(need(127, 65, 0, 0).spreadingFt2Gal()).isCloseTo(208.52, within(0.1));
    assertThat(PaintNeed.FT2_MIL_GAL).isCloseTo(1604, within(0.5));
  }

  /** A published thinning note: 50 % and 10 % thinner, 60 um, 30 % loss: 45.45 %, 7.58, 5.30. */
  @Test
  void thinnerLowersTheSolids() {
    PaintNeed need = need(60, 50, 10, 0.3);
    assertThat(need.thinnedSolidsPct()).isCloseTo(45.45, within(0.005));
    assertThat(need.spreadingM2L()).isCloseTo(7.58, within(0.005));
    assertThat(need.areaM2() / need.litres()).isCloseTo(5.30, within(0.005));
    assertThat(need.litres() - need.unthinnedL()).isCloseTo(need.unthinnedL() * 0.1, within(1e-9));
  }

  /**
   * Formula of the first note: 100 m2, 80 um, 60 %, 40 % loss, 4:1: 13.33, 22.22, 17.78 + 4.44 l.
   */
  @Test
  void componentsByVolume() {
    PaintNeed need = need(80, 60, 0, 0.4);
    assertThat(need.litresTheoretical()).isCloseTo(13.33, within(0.005));
    assertThat(need.litres()).isCloseTo(22.22, within(0.005));
    List<Double> parts = need.componentsL(FOUR_TO_ONE);
    assertThat(parts).hasSize(2);
    assertThat(parts.get(0)).isCloseTo(17.78, within(0.005));
    assertThat(parts.get(1)).isCloseTo(4.44, within(0.005));
    assertThat(need(80, 60, 10, 0.4).componentsL(FOUR_TO_ONE)).hasSize(3);
  }

  /** By mass 4:1 at 1.6 and 0.8 kg/l is 2.5 to 1.25 litres, 2:1: never the same as by volume. */
  @Test
  void aRatioByMassIsAnotherByVolume() {
    MixRatio byMass = new MixRatio(List.of(4.0, 1.0), MixRatio.Basis.MASS, List.of(1.6, 0.8));
    assertThat(byMass.volumeShares().get(0)).isCloseTo(2.0 / 3, within(1e-12));
    assertThat(byMass.massShares()).containsExactly(0.8, 0.2);
    MixRatio byVolume = new MixRatio(List.of(4.0, 1.0), MixRatio.Basis.VOLUME, List.of(1.6, 0.8));
    assertThat(byVolume.volumeShares()).containsExactly(0.8, 0.2);
    assertThat(byVolume.massShares().get(0)).isCloseTo(6.4 / 7.2, within(1e-12));
    assertThatThrownBy(FOUR_TO_ONE::massShares).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new MixRatio(List.of(4.0, 1.0), MixRatio.Basis.MASS, List.of()))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new MixRatio(List.of(4.0, 1.0), MixRatio.Basis.VOLUME, List.of(1.4)))
        .isInstanceOf(MeasureException.class);
  }

  @Test
  void refusesWhatIsNoRatio() {
    assertThat(MixRatio.readParts("4:1")).containsExactly(4.0, 1.0);
    assertThat(MixRatio.ONE_PACK.volumeShares()).containsExactly(1.0);
    assertThatThrownBy(() -> MixRatio.readParts("four")).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> MixRatio.readParts("4:")).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new MixRatio(List.of(), MixRatio.Basis.VOLUME, List.of()))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new MixRatio(List.of(0.0), MixRatio.Basis.VOLUME, List.of()))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(
            () ->
                new MixRatio(
                    List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0), MixRatio.Basis.VOLUME, List.of()))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new MixRatio(List.of(1.0), MixRatio.Basis.MASS, List.of(0.4)))
        .isInstanceOf(MeasureException.class);
    MixRatio six =
        new MixRatio(List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0), MixRatio.Basis.VOLUME, List.of());
    assertThat(six.volumeShares()).hasSize(6);
  }

  /** A published pot-life note: 2 h at 20 C, 1 h at 30 C, half an hour at 40 C. */
  @ParameterizedTest
  @CsvSource({"20,120", "30,60", "40,30", "10,240", "25,84.85"})
  void potLifeHalvesEveryTenDegrees(double celsius, double minutes) {
    assertThat(new PotLife(120, 20).minutesAt(celsius)).isCloseTo(minutes, within(0.005));
  }

  @Test
  void refusesPotLivesThatAreNone() {
    assertThatThrownBy(() -> new PotLife(0, 20)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new PotLife(10_001, 20)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new PotLife(60, 61)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new PotLife(60, 20).minutesAt(61))
        .isInstanceOf(MeasureException.class);
  }

  /** Hand sum: 60 min of pot life less 15 of rest at 8 l/h is 6 l; 20 l are four mixes of 5 l. */
  @Test
  void mixesAreUsedInsideTheirPotLife() {
    Mixes mixes = Mixes.of(20, 60, 15, 8);
    assertThat(mixes.mostLitres()).isCloseTo(6, within(1e-9));
    assertThat(mixes.number()).isEqualTo(4);
    assertThat(mixes.litresEach()).isCloseTo(5, within(1e-9));
    assertThat(mixes.minutesEach()).isCloseTo(37.5, within(1e-9));
    assertThat(Mixes.of(6, 60, 15, 8).number()).isEqualTo(1);
    assertThat(Mixes.of(6.001, 60, 15, 8).number()).isEqualTo(2);
    assertThatThrownBy(() -> Mixes.of(6, 60, 60, 8)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Mixes.of(0, 60, 0, 8)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Mixes.of(6, 60, 0, 0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Mixes.of(6, 60, -1, 8)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Mixes.of(1e9, 60, 0, 1)).isInstanceOf(MeasureException.class);
  }

  @Property(tries = 200)
  void noMixOutlivesItsPot(
      @ForAll @DoubleRange(min = 0.1, max = 500) double litres,
      @ForAll @DoubleRange(min = 10, max = 600) double potMin,
      @ForAll @DoubleRange(min = 1, max = 60) double rate) {
    Mixes mixes = Mixes.of(litres, potMin, 0, rate);
    assertThat(mixes.minutesEach()).isLessThanOrEqualTo(potMin * (1 + 1e-8));
    assertThat(mixes.number() * mixes.litresEach()).isCloseTo(litres, within(1e-9 * litres));
  }

  /** Published losses, taken one after the other. */
  @Test
  void lossesMultiply() {
    assertThat(PaintLosses.together(List.of(0.3, 0.05))).isCloseTo(0.335, within(1e-12));
    assertThat(PaintLosses.together(List.of())).isZero();
    assertThatThrownBy(() -> PaintLosses.together(List.of(1.0)))
        .isInstanceOf(MeasureException.class);
    assertThat(PaintLosses.Method.AIR_SPRAY.word()).isEqualTo("air-spray");
    assertThat(PaintLosses.Method.AIR_SPRAY.loss().high()).isEqualTo(0.5);
    assertThat(PaintLosses.Method.AIRLESS.loss().likely()).isEqualTo(0.3);
    assertThat(PaintLosses.Method.BRUSH.loss().low()).isEqualTo(0.1);
  }

  /** Published dead volumes: 10, 35, 60, 125 um by profile, each edge on both sides. */
  @ParameterizedTest
  @CsvSource({
    "0,0",
    "1,10",
    "50,10",
    "50.1,35",
    "100,35",
    "100.1,60",
    "150,60",
    "150.1,125",
    "300,125"
  })
  void blastProfileSwallowsPaint(double profileUm, double deadUm) {
    assertThat(PaintLosses.deadFilmUm(profileUm)).isEqualTo(deadUm);
    assertThatThrownBy(() -> PaintLosses.deadFilmUm(301)).isInstanceOf(MeasureException.class);
  }

  @Test
  void coatsFollowInsideTheirWindow() {
    CoatSchedule three = new CoatSchedule(3, new Interval(480, 10_080));
    assertThat(three.lastCoatMin()).isEqualTo(new Interval(960, 20_160));
    assertThat(new CoatSchedule(1, new Interval(1, Double.POSITIVE_INFINITY)).lastCoatMin())
        .isEqualTo(new Interval(0, 0));
    assertThatThrownBy(() -> new CoatSchedule(0, new Interval(1, 2)))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new CoatSchedule(1, new Interval(-1, 2)))
        .isInstanceOf(MeasureException.class);
  }

  /** Hand sum: 10 l/h at 50 %, 0.87 kg/l: 4350 g/h in 435 m3/h is 10 g/m3, a quarter of 40. */
  @Test
  void solventInTheExhaust() {
    SolventAir air = new SolventAir(10, 50, 435);
    assertThat(air.gramsM3()).isCloseTo(10, within(1e-9));
    assertThat(air.pctOfLel()).isCloseTo(25, within(1e-9));
    assertThat(new SolventAir(10, 50, 436).withinUsualLimit()).isTrue();
    assertThat(new SolventAir(10, 50, 434).withinUsualLimit()).isFalse();
    assertThat(new SolventAir(10, 100, 434).gramsM3()).isZero();
    assertThatThrownBy(() -> new SolventAir(0, 50, 1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new SolventAir(1, 101, 1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new SolventAir(1, 50, 0)).isInstanceOf(MeasureException.class);
  }

  /** 10 000 ft3 for each US gallon of solvent, a published rule, is 74.8 m3/l. */
  @Test
  void freshAirOfAContinuousOven() {
    assertThat(10_000 * 0.028316846592 / 3.785411784)
        .isCloseTo(SolventAir.CONTINUOUS_OVEN_M3_PER_L, within(0.05));
  }

  @Property(tries = 200)
  void paintAddsUpOverPartsAndFilm(
      @ForAll @DoubleRange(min = 1, max = 500) double one,
      @ForAll @DoubleRange(min = 1, max = 500) double other,
      @ForAll @DoubleRange(min = 20, max = 300) double film) {
    double apart =
        new PaintNeed(one, film, 60, 10, 0.3).litres()
            + new PaintNeed(other, film, 60, 10, 0.3).litres();
    assertThat(new PaintNeed(one + other, film, 60, 10, 0.3).litres())
        .isCloseTo(apart, within(1e-9 * apart));
    PaintNeed need = new PaintNeed(one, film, 60, 10, 0.3);
    assertThat(need.componentsL(FOUR_TO_ONE).stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(need.litres(), within(1e-9 * need.litres()));
  }

  @ParameterizedTest
  @CsvSource({
    "0,80,60,0,0",
    "1,0,60,0,0",
    "1,80,0,0,0",
    "1,80,101,0,0",
    "1,80,60,-1,0",
    "1,80,60,201,0",
    "1,80,60,0,-0.1",
    "1,80,60,0,1"
  })
  void refusesWhatIsNoPaint(double area, double film, double solids, double thinner, double loss) {
    assertThatThrownBy(() -> new PaintNeed(area, film, solids, thinner, loss))
        .isInstanceOf(MeasureException.class);
  }

  @Test
  void theLimitsThemselvesAreGood() {
    assertThat(new PaintNeed(1, 100, 100, 200, 0).litres()).isCloseTo(0.3, within(1e-9));
  }
}
