package spangle.coating.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.measure.MeasureException;

class HeatPathTest {

  private static HeatPath steel(double thicknessMm, HeatTransfer transfer, double ovenC) {
    return HeatPath.of(HeatedPart.bothSides(Metal.STEEL, thicknessMm), transfer, 20, ovenC);
  }

  /**
   * Incropera et al., Fundamentals of Heat and Mass Transfer, Example 5.3: a coated 3 mm aluminium
   * panel (2770 kg/m3, 875 J/kg K), h 40, emissivity 0.8, air and walls 175 C, from 25 C: 150 C
   * after 123 s; after 300 s more, cooled with h 10 in 25 C to 37 C, in all 986 s.
   */
  @Test
  void incroperaCureOfAPanel() {
    ThermalMass panel = celsius -> 2770 * 875 * 0.0015;
    HeatPath heating = new HeatPath(panel, new ConvectionRadiation(40, 0.8), 25, 175, 1);
    double heatUp = heating.minutesTo(150) * 60;
    assertThat(heatUp).isCloseTo(123, within(0.5));
    double atEnd = heating.celsiusAt((heatUp + 300) / 60);
    assertThat(atEnd).isCloseTo(175, within(0.3));
    HeatPath cooling = new HeatPath(panel, new ConvectionRadiation(10, 0.8), atEnd, 25, 1);
    assertThat(heatUp + 300 + cooling.minutesTo(37) * 60).isCloseTo(986, within(3.0));
  }

  /**
   * Incropera et al., Example 5.1: thermocouple sphere, time constant 1 s, h 400, 8500 kg/m3, 400
   * J/kg K: diameter 7.06e-4 m; from 25 to 199 C in gas at 200 C 5.165 s (the book prints 5.2).
   */
  @Test
  void incroperaThermocouple() {
    double diameterM = 6 * 400 * 1.0 / (8500 * 400);
    assertThat(diameterM).isCloseTo(7.06e-4, within(1e-6));
    ThermalMass sphere = celsius -> 8500 * 400 * diameterM / 6;
    HeatPath path = new HeatPath(sphere, new ConstantU(400), 25, 200, 1);
    assertThat(path.minutesTo(199) * 60).isCloseTo(5.165, within(0.001));
  }

  /** Lumped capacitance with constant U 35 and c 490: 6 mm steel, 20 to 180 C in 200 C. */
  @Test
  void constantUIsThePocketCalculatorForm() {
    double byHand = 7850 * 490 * 0.003 / 35 * Math.log(180.0 / 20.0) / 60;
    assertThat(byHand).isCloseTo(12.07, within(0.01));
    assertThat(steel(6, new ConstantU(35), 200).minutesTo(180)).isCloseTo(byHand, within(1e-9));
  }

  /** The same with c(T) of EN 1993-1-2 is 12.29 min. */
  @Test
  void specificHeatThatRisesTakesLonger() {
    HeatedPart part = HeatedPart.bothSides(Metal.STEEL, 6);
    ThermalMass risingC = part.thermalMass(ConvectionRadiation.usual());
    HeatPath path = new HeatPath(risingC, new ConstantU(35), 20, 200, 1);
    assertThat(path.minutesTo(180)).isCloseTo(12.29, within(0.01));
  }

  /**
   * h 20, emissivity 0.9, walls 200 C, c(T), both sides: arithmetic on EN 1993-1-2 and Boltzmann.
   */
  @ParameterizedTest
  @CsvSource({"1,1.9,2.5", "3,5.8,7.5", "6,11.6,15.1", "10,19.3,25.1", "20,38.5,50.2"})
  void radiationAndConvectionTogether(double thicknessMm, double to180, double to190) {
    HeatPath path = steel(thicknessMm, ConvectionRadiation.usual(), 200);
    assertThat(path.minutesTo(180)).isCloseTo(to180, within(0.06));
    assertThat(path.minutesTo(190)).isCloseTo(to190, within(0.06));
  }

  /** 3 mm aluminium, 20 to 180 C in 200 C: 3.8 min with radiation, 7.0 by U 20 alone. */
  @Test
  void aluminiumWithAndWithoutRadiation() {
    HeatedPart part = HeatedPart.bothSides(Metal.ALUMINIUM, 3);
    assertThat(HeatPath.of(part, ConvectionRadiation.usual(), 20, 200).minutesTo(180))
        .isCloseTo(3.8, within(0.06));
    assertThat(HeatPath.of(part, new ConstantU(20), 20, 200).minutesTo(180))
        .isCloseTo(7.0, within(0.06));
  }

  /** The radiative coefficient at emissivity 0.9 and walls of 200 C: 12 at 20 C, 22 at 200 C. */
  @Test
  void radiativeCoefficient() {
    ConvectionRadiation radiation = new ConvectionRadiation(0, 0.9);
    assertThat(radiation.coefficientWM2K(200, 20)).isCloseTo(12, within(0.5));
    assertThat(radiation.coefficientWM2K(200, 200))
        .isCloseTo(4 * 0.9 * 5.67e-8 * Math.pow(473.15, 3), within(1e-9));
    assertThat(ConvectionRadiation.bareMetal().emissivity()).isEqualTo(0.25);
    assertThat(ConvectionRadiation.bareMetal().hWM2K()).isEqualTo(20);
  }

  @Test
  void oneSideTakesTwiceAsLong() {
    HeatPath one =
        HeatPath.of(new HeatedPart(Metal.STEEL, 3, true), ConvectionRadiation.usual(), 20, 200);
    double both = steel(3, ConvectionRadiation.usual(), 200).minutesTo(180);
    assertThat(one.minutesTo(180)).isCloseTo(2 * both, within(1e-9));
  }

  @Test
  void theOvenTemperatureItselfIsNeverReached() {
    HeatPath path = steel(3, ConvectionRadiation.usual(), 200);
    assertThat(path.minutesTo(200)).isInfinite();
    assertThat(path.minutesTo(210)).isInfinite();
    assertThat(path.minutesTo(199.999)).isFinite();
    assertThat(path.minutesTo(20)).isZero();
    assertThat(path.minutesTo(10)).isZero();
    assertThat(path.celsiusAt(10_000)).isEqualTo(200);
  }

  @Test
  void aPartAsWarmAsItsSurroundingsStays() {
    HeatPath path = HeatPath.of(HeatedPart.bothSides(Metal.STEEL, 3), new ConstantU(20), 200, 200);
    assertThat(path.minutesTo(180)).isZero();
    assertThat(path.minutesTo(201)).isInfinite();
    assertThat(path.celsiusAt(5)).isEqualTo(200);
  }

  @Test
  void coolingGoesTheSameWay() {
    HeatPath cooling =
        HeatPath.of(HeatedPart.bothSides(Metal.STEEL, 3), new ConstantU(15), 190, 25);
    assertThat(cooling.minutesTo(40)).isCloseTo(15.4, within(0.05));
    assertThat(cooling.minutesTo(25)).isInfinite();
    assertThat(cooling.minutesTo(190)).isZero();
    assertThat(cooling.minutesTo(195)).isZero();
  }

  @Test
  void aMeasuredTimeStretchesThePath() {
    HeatPath path = steel(6, ConvectionRadiation.usual(), 200);
    HeatPath measured = path.through(180, 18);
    assertThat(measured.minutesTo(180)).isCloseTo(18, within(1e-9));
    assertThat(measured.minutesTo(100) / path.minutesTo(100))
        .isCloseTo(18 / path.minutesTo(180), within(1e-9));
    assertThat(path.through(200, 18)).isEqualTo(path);
    assertThat(path.through(20, 18)).isEqualTo(path);
  }

  @Test
  void refusesNumbersThatAreNone() {
    assertThatThrownBy(() -> new HeatedPart(Metal.STEEL, 0, false))
        .isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new HeatedPart(Metal.STEEL, 251, false))
        .isInstanceOf(MeasureException.class);
    assertThat(HeatedPart.bothSides(Metal.STEEL, 250).heatLengthM()).isEqualTo(0.125);
    assertThatThrownBy(() -> new ConstantU(0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ConvectionRadiation(-1, 0.9)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ConvectionRadiation(20, 1.1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new ConvectionRadiation(0, 0)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> steel(3, new ConstantU(20), 800)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> steel(3, new ConstantU(20), 200).stretched(0))
        .isInstanceOf(MeasureException.class);
  }

  @Property(tries = 60)
  void timeAndTemperatureInvertEachOther(
      @ForAll @DoubleRange(min = 0.5, max = 30) double thicknessMm,
      @ForAll @DoubleRange(min = 25, max = 198) double targetC) {
    HeatPath path = steel(thicknessMm, ConvectionRadiation.usual(), 200);
    assertThat(path.celsiusAt(path.minutesTo(targetC))).isCloseTo(targetC, within(0.01));
  }

  @Property(tries = 60)
  void thickerIsSlowerAndHotterOvensAreQuicker(
      @ForAll @DoubleRange(min = 0.5, max = 30) double thicknessMm) {
    double base = steel(thicknessMm, ConvectionRadiation.usual(), 200).minutesTo(180);
    assertThat(steel(thicknessMm * 1.1, ConvectionRadiation.usual(), 200).minutesTo(180))
        .isGreaterThan(base);
    assertThat(steel(thicknessMm, ConvectionRadiation.usual(), 210).minutesTo(180))
        .isLessThan(base);
    assertThat(steel(thicknessMm, ConvectionRadiation.bareMetal(), 200).minutesTo(180))
        .isGreaterThan(base);
  }
}
