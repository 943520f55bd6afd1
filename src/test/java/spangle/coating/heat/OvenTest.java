package spangle.coating.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.coating.heat.OvenEnergy.Oven;
import spangle.measure.Interval;
import spangle.measure.MeasureException;

class OvenTest {
  private static final CureWindow WINDOW = CureWindow.parse("10@180, max 20");

  private static BatchPart steel(String name, double thicknessMm) {
    return new BatchPart(
        name, HeatedPart.bothSides(Metal.STEEL, thicknessMm), ConvectionRadiation.usual(), WINDOW);
  }

  /**
   * Common practice: three minutes per mm of steel; 2700 x 948 / (7850 x 490) of it for aluminium.
   */
  @Test
  void ruleOfThumbWithoutMeasurements() {
    HeatUpTable rule = HeatUpTable.RULE_OF_THUMB;
    assertThat(rule.minutes(HeatedPart.bothSides(Metal.STEEL, 4))).isCloseTo(12, within(1e-9));
    assertThat(rule.minutes(new HeatedPart(Metal.STEEL, 4, true))).isCloseTo(24, within(1e-9));
    assertThat(rule.minutes(HeatedPart.bothSides(Metal.ALUMINIUM, 3)))
        .isCloseTo(9 * 0.66543, within(0.001));
  }

  @Test
  void aMeasuredTableOverridesTheRule() {
    HeatUpTable table =
        new HeatUpTable(
            List.of(
                new HeatUpTable.Row(Metal.STEEL, 6, 15), new HeatUpTable.Row(Metal.STEEL, 2, 6)));
    assertThat(table.minutes(HeatedPart.bothSides(Metal.STEEL, 1))).isEqualTo(3);
    assertThat(table.minutes(HeatedPart.bothSides(Metal.STEEL, 2))).isEqualTo(6);
    assertThat(table.minutes(HeatedPart.bothSides(Metal.STEEL, 4))).isEqualTo(10.5);
    assertThat(table.minutes(HeatedPart.bothSides(Metal.STEEL, 6))).isEqualTo(15);
    assertThat(table.minutes(HeatedPart.bothSides(Metal.STEEL, 12))).isEqualTo(30);
    HeatUpTable twice =
        new HeatUpTable(
            List.of(
                new HeatUpTable.Row(Metal.STEEL, 1, 2),
                new HeatUpTable.Row(Metal.STEEL, 3, 7),
                new HeatUpTable.Row(Metal.STEEL, 3, 9)));
    assertThat(twice.minutes(HeatedPart.bothSides(Metal.STEEL, 3))).isEqualTo(7);
    assertThat(twice.minutes(HeatedPart.bothSides(Metal.STEEL, 4))).isEqualTo(12);
    assertThatThrownBy(() -> new HeatUpTable.Row(Metal.STEEL, 0, 9))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new HeatUpTable.Row(Metal.STEEL, 3, 0))
        .isInstanceOf(MeasureException.class);
  }

  @Test
  void aPlanTakesTheSlowerForTheLeastAndTheFasterForTheMost() {
    HeatedPart part = HeatedPart.bothSides(Metal.STEEL, 6);
    CureRun model = CureRun.of(HeatPath.of(part, ConvectionRadiation.usual(), 20, 200), WINDOW);
    PlanDwell rule = PlanDwell.of(part, WINDOW, 20, 200, HeatUpTable.RULE_OF_THUMB);
    assertThat(rule.slowHeatUpMin()).isCloseTo(18, within(1e-6));
    assertThat(rule.fastHeatUpMin()).isCloseTo(model.heatUpMin(), within(1e-9));
    assertThat(rule.minMin()).isCloseTo(28, within(1e-6));
    assertThat(rule.maxMin()).isCloseTo(model.maxDwellMin(), within(1e-9));
    assertThat(rule.wholeMin()).isEqualTo(28);
    assertThat(rule.wholeMax()).isEqualTo((int) Math.floor(model.maxDwellMin()));
    assertThat(rule.cures()).isTrue();
    assertThat(rule.limitedByHeat()).isFalse();
    assertThat(rule.metalCAtMin()).isBetween(190.0, 200.0);

    HeatUpTable quick = new HeatUpTable(List.of(new HeatUpTable.Row(Metal.STEEL, 6, 8)));
    PlanDwell measured = PlanDwell.of(part, WINDOW, 20, 200, quick);
    assertThat(measured.slowHeatUpMin()).isCloseTo(model.heatUpMin(), within(1e-9));
    assertThat(measured.minMin()).isCloseTo(model.minDwellMin(), within(1e-9));
    assertThat(measured.maxMin()).isCloseTo(28, within(1e-6));
  }

  @Test
  void aPlanSaysWhenNoDwellIsGood() {
    HeatedPart part = HeatedPart.bothSides(Metal.STEEL, 6);
    PlanDwell cold = PlanDwell.of(part, WINDOW, 20, 180, HeatUpTable.RULE_OF_THUMB);
    assertThat(cold.cures()).isFalse();
    assertThatThrownBy(cold::wholeMin).isInstanceOf(IllegalStateException.class);
    PlanDwell thick =
        PlanDwell.of(
            HeatedPart.bothSides(Metal.STEEL, 20), WINDOW, 20, 200, HeatUpTable.RULE_OF_THUMB);
    assertThat(thick.minMin()).isGreaterThan(thick.maxMin());
    assertThat(thick.cures()).isFalse();
  }

  @Test
  void wholeMinutesMustLieInsideTheRange() {
    assertThat(new PlanDwell(200, 1, 1, 10.2, 10.9, 190, false).cures()).isFalse();
    assertThat(new PlanDwell(200, 1, 1, 10.2, 11.0, 190, false).cures()).isTrue();
    assertThat(new PlanDwell(200, 1, 1, 10, 10, 190, false).cures()).isTrue();
    assertThat(new PlanDwell(200, 1, 1, 10, Double.POSITIVE_INFINITY, 190, false).wholeMax())
        .isEqualTo(Integer.MAX_VALUE);
  }

  @Test
  void oneAndThreeMillimetresMayShareWhereOneAndEightMayNot() {
    OvenBatchVerdict close =
        OvenBatchVerdict.of(
                List.of(steel("clip", 1), steel("bracket", 3)),
                List.of(200.0),
                20,
                HeatUpTable.RULE_OF_THUMB)
            .get(0);
    Interval common = close.common().orElseThrow();
    assertThat(common.min()).isCloseTo(close.probe().dwell().minMin(), within(1e-12));
    assertThat(close.probe().part().name()).isEqualTo("bracket");
    assertThat(close.quickest().part().name()).isEqualTo("clip");
    assertThat(close.conflict()).isEmpty();
    assertThat(close.hopeless()).isEmpty();
    assertThat(close.words()).contains("At 200 C all cure between").contains("probe bracket");

    OvenBatchVerdict far =
        OvenBatchVerdict.of(
                List.of(steel("clip", 1), steel("plate", 8)),
                List.of(200.0),
                20,
                HeatUpTable.RULE_OF_THUMB)
            .get(0);
    assertThat(far.common()).isEmpty();
    OvenBatchVerdict.Conflict conflict = far.conflict().orElseThrow();
    assertThat(conflict.slow()).isEqualTo("plate");
    assertThat(conflict.quick()).isEqualTo("clip");
    assertThat(conflict.apartMin())
        .isCloseTo(
            far.shares().get(1).dwell().minMin() - far.shares().get(0).dwell().maxMin(),
            within(1e-12));
    assertThat(far.words()).contains("plate and clip cannot share").contains("min apart");
  }

  @Test
  void theBestSettingIsTheShortestStayThatHoldsAll() {
    List<OvenBatchVerdict> verdicts =
        OvenBatchVerdict.of(
            List.of(steel("clip", 1), steel("bracket", 3)),
            List.of(170.0, 185.0, 200.0),
            20,
            HeatUpTable.RULE_OF_THUMB);
    assertThat(verdicts.get(0).common()).isEmpty();
    assertThat(verdicts.get(0).hopeless()).containsExactly("clip", "bracket");
    assertThat(verdicts.get(0).conflict()).isEmpty();
    assertThat(verdicts.get(0).words()).contains("no dwell for clip, bracket");
    assertThat(OvenBatchVerdict.best(verdicts)).contains(verdicts.get(2));
    assertThat(OvenBatchVerdict.best(verdicts.subList(0, 1))).isEmpty();
    assertThatThrownBy(() -> new OvenBatchVerdict(200, List.of()))
        .isInstanceOf(MeasureException.class);
  }

  /** ASTM D7803 and trade practice: cure plus 30 C, an hour where nothing shorter is proven. */
  @Test
  void degassingIsHotterAndNeverShorterThanProven() {
    assertThat(DegassingBake.settingC(200)).isEqualTo(230);
    HeatedPart thin = HeatedPart.bothSides(Metal.STEEL, 3);
    DegassingBake unproven =
        DegassingBake.of(thin, 20, 230, DegassingBake.UNPROVEN_MINUTES, HeatUpTable.RULE_OF_THUMB);
    assertThat(unproven.minMinutes()).isEqualTo(60);
    double toOven = HeatPath.of(thin, ConvectionRadiation.bareMetal(), 20, 230).minutesTo(225);
    assertThat(unproven.heatUpMin()).isCloseTo(toOven, within(1e-9));
    DegassingBake heavy =
        DegassingBake.of(
            HeatedPart.bothSides(Metal.STEEL, 20), 20, 230, 20, HeatUpTable.RULE_OF_THUMB);
    assertThat(heavy.minMinutes()).isEqualTo(heavy.heatUpMin()).isGreaterThan(60);
    HeatUpTable slow = new HeatUpTable(List.of(new HeatUpTable.Row(Metal.STEEL, 3, 75)));
    assertThat(DegassingBake.of(thin, 20, 230, 60, slow).minMinutes()).isEqualTo(75);
    assertThatThrownBy(() -> DegassingBake.of(thin, 20, 230, 0, slow))
        .isInstanceOf(MeasureException.class);
  }

  /** Lumped cooling of 3 mm sheet, 190 to 40 C in 25 C air at 15 W/m2 K: 15.4 min. */
  @Test
  void cooling() {
    HeatedPart part = HeatedPart.bothSides(Metal.STEEL, 3);
    double still = Cooling.minutes(part, 190, 40, 25, Cooling.STILL_AIR_U_WM2K);
    assertThat(still).isCloseTo(15.4, within(0.05));
    assertThat(Cooling.minutes(part, 190, 40, 25, Cooling.FAN_U_WM2K))
        .isCloseTo(still / 2, within(1e-9));
    assertThat(Cooling.minutes(part, 30, 40, 25, 15)).isZero();
    assertThat(Cooling.minutes(part, 40, 40, 25, 15)).isZero();
    assertThat(Cooling.minutes(part, 190, Cooling.BEFORE_POWDER_C, 38, 15)).isInfinite();
    assertThat(Cooling.minutes(part, 190, Cooling.BEFORE_HANDLING_C, 38, 15)).isFinite();
  }

  /** A published oven heat-load note: 0.35 Btu/h ft2 F, 3400 ft2, 230 F rise: 273 700 Btu/h. */
  @Test
  void panelLoss() {
    double areaM2 = 3400 * 0.09290304;
    double kW = OvenPanel.MM_100.lossKW(areaM2, 20 + 230 / 1.8, 20);
    assertThat(kW).isCloseTo(80.2, within(0.05));
    assertThat(kW * 3412.142).isCloseTo(273_700, within(300.0));
    assertThat(OvenPanel.MM_75.uWM2K()).isCloseTo(2.27, within(0.005));
    assertThat(OvenPanel.MM_125.uWM2K()).isCloseTo(1.70, within(0.005));
    assertThat(OvenPanel.MM_150.uWM2K()).isCloseTo(1.42, within(0.005));
    assertThat(OvenPanel.MM_200.uWM2K()).isCloseTo(1.14, within(0.005));
    assertThat(OvenPanel.MM_200.thicknessMm()).isEqualTo(200);
  }

  /** The same note between its rows, along a straight line; inches are a little more than mm. */
  @Test
  void panelsOfAnyThickness() {
    double btu = 5.678263341;
    assertThat(OvenPanel.uWM2K(75)).isCloseTo(0.40 * btu, within(1e-9));
    assertThat(OvenPanel.uWM2K(80)).isCloseTo(0.39 * btu, within(1e-9));
    assertThat(OvenPanel.uWM2K(100)).isCloseTo(0.35 * btu, within(1e-9));
    assertThat(OvenPanel.uWM2K(175)).isCloseTo(0.225 * btu, within(1e-9));
    assertThat(OvenPanel.uWM2K(200)).isCloseTo(0.20 * btu, within(1e-9));
    assertThat(OvenPanel.uWM2K(8 * 25.4)).isCloseTo(0.20 * btu, within(1e-9));
    assertThat(OvenPanel.uWM2K(60)).isCloseTo(0.40 * btu, within(1e-9));
    assertThat(OvenPanel.USUAL).isEqualTo(OvenPanel.MM_100);
  }

  @Test
  void ovenEnergyCountsCarriersPanelsAndExhaust() {
    Oven oven = new Oven(OvenPanel.MM_100.uWM2K(), 100, 1000, 150);
    OvenEnergy energy = OvenEnergy.of(oven, Metal.STEEL, 500, 200, 20, 200, 30);
    double perKg = Metal.STEEL.heatJKg(20, 200) / 3.6e6;
    assertThat(energy.partsKWh()).isCloseTo(500 * perKg, within(1e-9));
    assertThat(energy.carriersKWh()).isCloseTo(200 * perKg, within(1e-9));
    assertThat(energy.panelsKWh())
        .isCloseTo(OvenPanel.MM_100.uWM2K() * 100 * 180 / 1000 / 2, within(1e-9));
    assertThat(energy.exhaustKWh()).isCloseTo(1000 * 1.204 * 1006 * 180 / 3.6e6 / 2, within(1e-9));
    assertThat(energy.totalKWh())
        .isCloseTo(
            energy.partsKWh() + energy.carriersKWh() + energy.panelsKWh() + energy.exhaustKWh(),
            within(1e-9));
    OvenEnergy aluminium = OvenEnergy.of(oven, Metal.ALUMINIUM, 500, 0, 20, 200, 0);
    assertThat(aluminium.partsKWh())
        .isCloseTo(500 * Metal.ALUMINIUM.heatJKg(20, 200) / 3.6e6, within(1e-9));
    assertThat(aluminium.totalKWh()).isCloseTo(aluminium.partsKWh(), within(1e-12));
  }

  /** 1.08 Btu/h per cfm and F is a published exhaust factor. */
  @Test
  void exhaustAgreesWithTheTradeFactor() {
    Oven oven = new Oven(OvenPanel.MM_100.uWM2K(), 0, 1699.011, 1);
    double btuH = oven.standingKW(20 + 100 / 1.8, 20) * 3412.142;
    assertThat(btuH).isCloseTo(1.08 * 1000 * 100, within(800.0));
  }

  @Test
  void recoveryIsTheTimeTheHeaterIsOutrun() {
    Oven oven = new Oven(OvenPanel.MM_100.uWM2K(), 0, 0, 50);
    OvenEnergy energy = new OvenEnergy(20, 5, 0, 0);
    assertThat(energy.recoveryMinutes(oven, 10, 25, 20, 200)).isZero();
    double demand = 25 * 20 * 180 / 1000.0;
    assertThat(energy.recoveryMinutes(oven, 20, 25, 20, 200))
        .isCloseTo((1 - 50 / demand) * 25 / 50 * 60, within(1e-9));
    Oven weak = new Oven(OvenPanel.MM_75.uWM2K(), 1000, 0, 50);
    assertThat(energy.recoveryMinutes(weak, 20, 25, 20, 200)).isInfinite();
  }

  @Test
  void refusesOvensThatAreNone() {
    assertThatThrownBy(() -> new Oven(-1, 1, 0, 50)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new Oven(OvenPanel.MM_100.uWM2K(), -1, 0, 50))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new Oven(OvenPanel.MM_100.uWM2K(), 1, -1, 50))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new Oven(OvenPanel.MM_100.uWM2K(), 1, 0, 0))
        .isInstanceOf(MeasureException.class);
    Oven oven = new Oven(OvenPanel.MM_100.uWM2K(), 1, 0, 10);
    assertThatThrownBy(() -> OvenEnergy.of(oven, Metal.STEEL, -1, 0, 20, 200, 1))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> OvenEnergy.of(oven, Metal.STEEL, 1, -1, 20, 200, 1))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> OvenEnergy.of(oven, Metal.STEEL, 1, 1, 20, 200, -1))
        .isInstanceOf(MeasureException.class);
  }

  /** A published conveyor article: 600 parts/h, 2 per carrier, 3 ft pitch: 15 ft/min. */
  @Test
  void conveyor() {
    assertThat(Conveyor.speedPerMinute(600, 2, 3)).isEqualTo(15);
    assertThat(Conveyor.ovenLength(15, 25)).isEqualTo(375);
    assertThatThrownBy(() -> Conveyor.speedPerMinute(0, 2, 3)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Conveyor.speedPerMinute(600, 0, 3))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> Conveyor.speedPerMinute(600, 2, 0))
        .isInstanceOf(MeasureException.class);
  }
}
