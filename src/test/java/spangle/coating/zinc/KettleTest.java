package spangle.coating.zinc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.coating.zinc.Pickling.Rust;
import spangle.measure.LowLikelyHigh;
import spangle.measure.MeasureException;

class KettleTest {
  private static final ZincBath BATH = new ZincBath(5000, 1200, 2000, 450);

  /** Zinc from 20 to 450 C: 295 kJ/kg (cp 22.40 + 0.0105 T J/mol K, 112 kJ/kg, 0.480 kJ/kg K). */
  @Test
  void heatOfZinc() {
    assertThat(DipHeat.zincKJKg(20, 450)).isCloseTo(295, within(0.5));
    assertThat(DipHeat.LIQUID_ZINC_KJ_KG_K).isCloseTo(0.480, within(0.0005));
    double solid = DipHeat.zincKJKg(20, 419.5) - DipHeat.zincKJKg(100, 419.5);
    double byHand = (22.40 * 80 + 0.0105 / 2 * (373.15 * 373.15 - 293.15 * 293.15)) / 65.38;
    assertThat(solid).isCloseTo(byHand, within(1e-9));
  }

  /** EN 1993-1-2 and the zinc above: 2000 kg/h and 120 kg/h: 129.05 + 9.84 = 138.9 kW net. */
  @Test
  void heatOfAnHour() {
    DipHeat hour = DipHeat.of(2000, 120, 20, 20, 450);
    assertThat(hour.steelKJ() / 3600).isCloseTo(129.05, within(0.1));
    assertThat(hour.zincKJ() / 3600).isCloseTo(9.84, within(0.02));
    assertThat(hour.totalKWh()).isCloseTo(138.9, within(0.1));
    assertThat(hour.totalKJ()).isCloseTo(hour.steelKJ() + hour.zincKJ(), within(1e-9));
  }

  /** Steel that comes from the dryer at 80 C takes 56.9 kWh/t (EN 1993-1-2). */
  @Test
  void warmWorkTakesLess() {
    assertThat(DipHeat.of(1000, 0, 80, 20, 450).totalKWh()).isCloseTo(56.9, within(0.1));
    assertThat(DipHeat.of(1000, 0, 20, 20, 450).totalKWh()).isCloseTo(64.5, within(0.1));
  }

  /** A dip of 1 % of the bath's mass costs 4.8 K when the burners give nothing. */
  @Test
  void bathTemperatureDrop() {
    DipHeat dip = DipHeat.of(BATH.massKg() / 100, 0, 20, 20, 450);
    assertThat(BATH.dropK(dip)).isCloseTo(4.8, within(0.05));
  }

  /** One published plant: 13.72 m long, 2.97 m deep, at most 9525 kg/h. */
  @Test
  void kettleCapacityByItsLongWalls() {
    assertThat(DipHeat.kgPerHour(13_720, 2970)).isCloseTo(9525, within(30.0));
    assertThatThrownBy(() -> DipHeat.kgPerHour(0, 1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> DipHeat.kgPerHour(1, 0)).isInstanceOf(MeasureException.class);
  }

  /** Handbook fit of the melt's density: 6.56 g/cm3 at 450 C. */
  @Test
  void bathMassAndLevel() {
    assertThat(BATH.densityKgM3()).isCloseTo(6560, within(1.0));
    assertThat(BATH.massKg()).isCloseTo(12 * 6559.93, within(1.0));
    double drop = BATH.levelDropMm(393.6);
    assertThat(drop).isCloseTo(10, within(0.001));
    assertThat(BATH.topUpKg(drop)).isCloseTo(393.6, within(1e-6));
    assertThat(BATH.ingots(drop, 25)).isEqualTo(16);
    assertThat(BATH.ingots(BATH.levelDropMm(50), 25)).isEqualTo(2);
    assertThat(BATH.ingots(0, 25)).isZero();
    assertThat(BATH.ingots(-5, 25)).isZero();
  }

  @Test
  void deepPartsSayHowLowTheBathMayFall() {
    double least = ZincBath.leastDepthMm(1500, 50, 300);
    assertThat(least).isEqualTo(1850);
    assertThat(BATH.kgUntilDepth(least)).isCloseTo(BATH.topUpKg(150), within(1e-9));
    assertThat(BATH.kgUntilDepth(2001)).isZero();
  }

  @Test
  void refusesBathsThatAreNone() {
    assertThatThrownBy(() -> new ZincBath(0, 1, 1, 450)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ZincBath(1, 0, 1, 450)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ZincBath(1, 1, 0, 450)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ZincBath(1, 1, 1, 400)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> BATH.ingots(1, 0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> DipHeat.of(-1, 0, 20, 20, 450)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> DipHeat.of(1, -1, 20, 20, 450)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> DipHeat.of(1, 1, 460, 20, 450)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> DipHeat.zincKJKg(430, 450)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> DipHeat.zincKJKg(20, 400)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new DipHeat(-1, 0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new DipHeat(0, -1)).isInstanceOf(MeasureException.class);
  }

  /** Common practice inside the published 3-10 min: 2 min + 0.5 min/mm, at least 3. */
  @ParameterizedTest
  @CsvSource({"1,3", "2,3", "2.1,3.05", "6,5", "16,10"})
  void immersion(double thickestMm, double minutes) {
    assertThat(DipTimes.immersionMin(thickestMm)).isCloseTo(minutes, within(1e-9));
  }

  /** Four to six dips an hour (common practice): 10 to 15 minutes from dip to dip. */
  @Test
  void kettleCycle() {
    assertThat(DipTimes.cycleMin(6)).isEqualTo(new LowLikelyHigh(10, 12.5, 15));
    assertThatThrownBy(() -> DipTimes.immersionMin(0)).isInstanceOf(MeasureException.class);
  }

  /** Published range 20 minutes to 3 hours; the steps between are common practice. */
  @Test
  void pickling() {
    assertThat(Pickling.minutes(Rust.BRIGHT, 0)).isEqualTo(20);
    assertThat(Pickling.minutes(Rust.LIGHT, 60)).isEqualTo(60);
    assertThat(Pickling.minutes(Rust.RUSTY, 120)).isEqualTo(120);
    assertThat(Pickling.minutes(Rust.HEAVY, 120)).isEqualTo(180);
    assertThat(Pickling.minutes(Rust.HEAVY, 200)).isEqualTo(180);
    assertThat(Pickling.spent(120)).isTrue();
    assertThat(Pickling.spent(119)).isFalse();
    assertThatThrownBy(() -> Pickling.minutes(Rust.LIGHT, -1)).isInstanceOf(MeasureException.class);
  }

  /** ISO 1461 control sample by lot size (from memory), each edge on both sides. */
  @ParameterizedTest
  @CsvSource({
    "1,1",
    "2,2",
    "3,3",
    "4,3",
    "500,3",
    "501,5",
    "1200,5",
    "1201,8",
    "3200,8",
    "3201,13",
    "10000,13",
    "10001,20"
  })
  void controlSample(int lot, int articles) {
    assertThat(ZincInspection.of(lot, 1, Iso1461.steel(3)).articles()).isEqualTo(articles);
  }

  /** ISO 1461: three areas over 2 m2, one from 10 cm2, smaller articles in groups of 10 cm2. */
  @Test
  void referenceAreas() {
    ZincRow row = Iso1461.steel(3);
    ZincInspection large = ZincInspection.of(10, 2.01, row);
    assertThat(large.areasPerArticle()).isEqualTo(3);
    assertThat(large.readingsPerArea()).isEqualTo(5);
    assertThat(large.localUm()).isEqualTo(45);
    assertThat(large.meanUm()).isEqualTo(55);
    assertThat(large.groupedArticles()).isEqualTo(1);
    assertThat(ZincInspection.of(10, 2, row).areasPerArticle()).isEqualTo(1);
    assertThat(ZincInspection.of(10, 0.001, row).areasPerArticle()).isEqualTo(1);
    ZincInspection small = ZincInspection.of(10, 0.0004, row);
    assertThat(small.areasPerArticle()).isZero();
    assertThat(small.groupedArticles()).isEqualTo(3);
    assertThat(ZincInspection.of(10, 0.0005, row).groupedArticles()).isEqualTo(2);
    assertThatThrownBy(() -> ZincInspection.of(0, 1, row)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> ZincInspection.of(1, 0, row)).isInstanceOf(MeasureException.class);
  }
}
