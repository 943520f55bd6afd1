package spangle.coating.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MetalTest {

  /** EN 1993-1-2, 3.4.1.2: 440, 488, 530 J/kg K; mean from 20 to 200 C 490. */
  @Test
  void steelFollowsEn1993() {
    assertThat(Metal.STEEL.specificHeatJKgK(20)).isCloseTo(440, within(1.0));
    assertThat(Metal.STEEL.specificHeatJKgK(100)).isCloseTo(488, within(1.0));
    assertThat(Metal.STEEL.specificHeatJKgK(200)).isCloseTo(530, within(1.0));
    assertThat(Metal.STEEL.meanHeatJKgK(20, 200)).isCloseTo(490, within(0.5));
    assertThat(Metal.STEEL.meanHeatJKgK(20, 450)).isCloseTo(540, within(0.5));
    assertThat(Metal.STEEL.heatJKg(20, 450) / 1000).isCloseTo(232.3, within(0.1));
    assertThat(Metal.STEEL.constantHeatJKgK()).isEqualTo(490);
    assertThat(Metal.STEEL.densityKgM3()).isEqualTo(7850);
  }

  /** EN 1993-1-2: second branch from 600 C, 666 + 13002 / (738 - T): 760 at 600, 878.7 at 677. */
  @Test
  void steelChangesBranchAt600() {
    assertThat(Metal.STEEL.specificHeatJKgK(599.999)).isCloseTo(760, within(1.0));
    assertThat(Metal.STEEL.specificHeatJKgK(600)).isCloseTo(666 + 13002 / 138.0, within(1e-9));
    assertThat(Metal.STEEL.specificHeatJKgK(677)).isCloseTo(666 + 13002 / 61.0, within(1e-9));
    double byHand = 666 * 20 + 13002 * Math.log(138.0 / 118.0);
    assertThat(Metal.STEEL.heatJKg(600, 620)).isCloseTo(byHand, within(1e-6));
  }

  /** EN 1999-1-2 (from memory): 911 at 20 C, 985 at 200 C, mean 948. */
  @Test
  void aluminiumFollowsEn1999() {
    assertThat(Metal.ALUMINIUM.specificHeatJKgK(20)).isCloseTo(911.2, within(0.01));
    assertThat(Metal.ALUMINIUM.specificHeatJKgK(200)).isCloseTo(985, within(0.01));
    assertThat(Metal.ALUMINIUM.meanHeatJKgK(20, 200)).isCloseTo(948.1, within(0.01));
    assertThat(Metal.ALUMINIUM.constantHeatJKgK()).isEqualTo(948);
    assertThat(Metal.ALUMINIUM.densityKgM3()).isEqualTo(2700);
    assertThat(Metal.ALUMINIUM.word()).isEqualTo("aluminium");
  }

  /** The heat content is the integral of the specific heat, below the seam at 600 C. */
  @Property(tries = 100)
  void heatIsTheIntegralOfSpecificHeat(
      @ForAll @DoubleRange(min = 0, max = 580) double fromC,
      @ForAll @DoubleRange(min = 1, max = 10) double step) {
    for (Metal metal : Metal.values()) {
      double middle = metal.specificHeatJKgK(fromC + step / 2);
      double ends = metal.specificHeatJKgK(fromC) + metal.specificHeatJKgK(fromC + step);
      double simpson = step / 6 * (ends + 4 * middle);
      assertThat(metal.heatJKg(fromC, fromC + step)).isCloseTo(simpson, within(1e-5 * simpson));
    }
  }
}
