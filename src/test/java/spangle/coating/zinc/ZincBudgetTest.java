package spangle.coating.zinc;

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
import spangle.measure.LowLikelyHigh;
import spangle.measure.MeasureException;

class ZincBudgetTest {

  private static ZincBudget plate(double thicknessMm, double plateM2, SteelClass steel) {
    return ZincBudget.of(
        List.of(new ZincSkin(2 * plateM2, Iso1461.steel(thicknessMm))),
        plateM2 * thicknessMm * 7.85,
        steel,
        false,
        ZincBudget.USUAL_YIELD);
  }

  /** ISO 1461:2009 Table 3 and 7.2 g/m2 per um, both faces, edges ignored. */
  @ParameterizedTest
  @CsvSource({
    "1.0,648,8.25",
    "1.5,792,6.73",
    "2.0,792,5.04",
    "3.0,792,3.36",
    "3.01,1008,4.27",
    "6.0,1008,2.14",
    "6.01,1224,2.59",
    "20,1224,0.78"
  })
  void pickupOfFlatPlate(double thicknessMm, double gramsPerPlateM2, double pickupPct) {
    ZincBudget budget = plate(thicknessMm, 1, SteelClass.A);
    assertThat(budget.minimumKg() * 1000).isCloseTo(gramsPerPlateM2, within(1e-6));
    assertThat(budget.minimumPickupPct()).isCloseTo(pickupPct, within(0.01));
  }

  /** ISO 1461 Table 3, 395 g/m2: 500 brackets of 120 x 120 x 3 mm with edges: 5.97 kg, 3.52 %. */
  @Test
  void bracketsWithTheirEdges() {
    double eachM2 = 2 * 0.12 * 0.12 + 4 * 0.12 * 0.003;
    assertThat(eachM2).isCloseTo(0.03024, within(1e-9));
    double steelKg = 500 * 0.12 * 0.12 * 0.003 * 7850;
    ZincBudget budget =
        ZincBudget.of(
            List.of(new ZincSkin(500 * eachM2, Iso1461.steel(3))),
            steelKg,
            SteelClass.A,
            false,
            0.75);
    assertThat(budget.areaM2()).isCloseTo(15.12, within(1e-9));
    assertThat(budget.minimumKg()).isCloseTo(5.97, within(5.97 * 0.005));
    assertThat(budget.minimumPickupPct()).isCloseTo(3.52, within(3.52 * 0.005));
  }

  /** ISO 1461 Table 3: box 800 x 1000 x 300 of 2 mm, six faces: 2.117 kg, 5.03 %. */
  @Test
  void closedSkinBox() {
    double sheetM2 = 2 * (0.8 * 1.0 + 0.8 * 0.3 + 1.0 * 0.3);
    ZincBudget budget = plate(2, sheetM2, SteelClass.A);
    assertThat(budget.steelKg()).isCloseTo(42.08, within(0.01));
    assertThat(budget.areaM2()).isCloseTo(5.36, within(1e-9));
    assertThat(budget.minimumKg()).isCloseTo(2.117, within(2.117 * 0.005));
    assertThat(budget.minimumPickupPct()).isCloseTo(5.03, within(5.03 * 0.005));
  }

  /** 12 t of 2 mm sheet: 1529 m2, 605 kg; flat 5.5 % says 660, area x 1.4 / 0.75 says 1130. */
  @Test
  void areaAgainstFlatPercentage() {
    double plateM2 = 12_000 / (2 * 7.85);
    ZincBudget budget = plate(2, plateM2, SteelClass.B);
    assertThat(budget.areaM2()).isCloseTo(1529, within(1.0));
    assertThat(budget.minimumKg()).isCloseTo(605, within(1.0));
    assertThat(budget.flatPercentKg()).isCloseTo(660, within(1e-6));
    assertThat(budget.minimumKg() * 1.4 / 0.75).isCloseTo(1130, within(1.5));
    assertThat(budget.toBuyKg().likely()).isCloseTo(605.5 * 1.6 / 0.75, within(1.0));
    assertThat(budget.flatPercentOffPct())
        .isCloseTo(100 * (660 / budget.toBuyKg().likely() - 1), within(1e-6));
    assertThat(budget.flatPercentOffPct()).isNegative();
  }

  @Test
  void likelyIsTheMinimumTimesTheGrowthFactor() {
    ZincBudget budget = plate(3, 10, SteelClass.C);
    assertThat(budget.likelyKg()).isCloseTo(7.92 * 2.3, within(1e-9));
    assertThat(budget.likelyPickupPct()).isCloseTo(budget.minimumPickupPct() * 2.3, within(1e-9));
    assertThat(budget.growth()).isEqualTo(SteelClass.C.growth());
  }

  @Test
  void zincToBuyWidensWithGrowthAndYield() {
    LowLikelyHigh buy = plate(3, 10, SteelClass.A).toBuyKg();
    assertThat(buy.low()).isCloseTo(7.92 * 1.1 / 0.82, within(1e-9));
    assertThat(buy.likely()).isCloseTo(7.92 * 1.2 / 0.75, within(1e-9));
    assertThat(buy.high()).isCloseTo(7.92 * 1.3 / 0.65, within(1e-9));
    List<ZincSkin> skins = List.of(new ZincSkin(20, Iso1461.steel(3)));
    LowLikelyHigh poor = ZincBudget.of(skins, 100, SteelClass.A, false, 0.5).toBuyKg();
    assertThat(poor.low()).isCloseTo(7.92 * 1.1 / 0.82, within(1e-9));
    assertThat(poor.high()).isCloseTo(7.92 * 1.3 / 0.5, within(1e-9));
    LowLikelyHigh perfect = ZincBudget.of(skins, 100, SteelClass.A, false, 1).toBuyKg();
    assertThat(perfect.low()).isCloseTo(7.92 * 1.1, within(1e-9));
    assertThat(perfect.high()).isCloseTo(7.92 * 1.3 / 0.65, within(1e-9));
  }

  @Test
  void lossesArePartsOfThePurchaseAndNeverOnTop() {
    ZincBudget budget = plate(3, 10, SteelClass.A);
    ZincLosses losses = budget.losses();
    assertThat(losses.ashKg() + losses.drossKg() + losses.splashKg())
        .isCloseTo(budget.toBuyKg().likely() - budget.likelyKg(), within(1e-9));
    assertThat(losses.ashKg()).isCloseTo(losses.drossKg(), within(1e-9)).isPositive();
    assertThat(losses.splashKg()).isPositive().isLessThan(losses.ashKg());
    assertThat(losses.skimmedAshKg()).isCloseTo(20 * 0.2, within(1e-9));
  }

  @Test
  void blastedWorkTakesMore() {
    List<ZincSkin> skins = List.of(new ZincSkin(20, Iso1461.steel(3)));
    ZincBudget blasted = ZincBudget.of(skins, 100, SteelClass.A, true, 0.75);
    assertThat(blasted.growth().low()).isCloseTo(1.1 * 1.3, within(1e-9));
    assertThat(blasted.growth().likely()).isCloseTo(1.2 * 1.5, within(1e-9));
    assertThat(blasted.growth().high()).isCloseTo(1.3 * 1.7, within(1e-9));
  }

  @Test
  void severalThicknessesAreEachTheirOwnRow() {
    ZincBudget frame =
        ZincBudget.of(
            List.of(
                new ZincSkin(4, Iso1461.steel(2)),
                new ZincSkin(1, Iso1461.steel(5)),
                new ZincSkin(0.5, Iso1461.steel(10))),
            60,
            SteelClass.A,
            false,
            0.75);
    assertThat(frame.areaM2()).isEqualTo(5.5);
    assertThat(frame.minimumKg()).isCloseTo((4 * 55 + 70 + 0.5 * 85) * 7.2 / 1000, within(1e-9));
  }

  @Test
  void refusesWorkThatIsNone() {
    assertThatThrownBy(() -> ZincBudget.of(List.of(), 1, SteelClass.A, false, 0.75))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ZincSkin(0, Iso1461.steel(3)))
        .isInstanceOf(MeasureException.class);
    List<ZincSkin> skins = List.of(new ZincSkin(1, Iso1461.steel(3)));
    assertThatThrownBy(() -> ZincBudget.of(skins, 0, SteelClass.A, false, 0.75))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> ZincBudget.of(skins, 1, SteelClass.A, false, 0))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> ZincBudget.of(skins, 1, SteelClass.A, false, 1.01))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ZincBudget(0, 1, 1, SteelClass.A.growth(), 0.75))
        .isInstanceOf(MeasureException.class);
  }

  @Property(tries = 100)
  void zincAddsUpOverParts(
      @ForAll @DoubleRange(min = 0.01, max = 100) double oneM2,
      @ForAll @DoubleRange(min = 0.01, max = 100) double otherM2) {
    ZincSkin one = new ZincSkin(oneM2, Iso1461.steel(2));
    ZincSkin other = new ZincSkin(otherM2, Iso1461.steel(8));
    double together =
        ZincBudget.of(List.of(one, other), 10, SteelClass.B, false, 0.75).toBuyKg().high();
    double apart =
        ZincBudget.of(List.of(one), 10, SteelClass.B, false, 0.75).toBuyKg().high()
            + ZincBudget.of(List.of(other), 10, SteelClass.B, false, 0.75).toBuyKg().high();
    assertThat(together).isCloseTo(apart, within(1e-9 * apart));
  }
}
