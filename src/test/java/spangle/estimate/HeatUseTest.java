package spangle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import spangle.coating.heat.OvenPanel;

class HeatUseTest {
  /** EN 1993-1-2, 3.4.1.2 integrated: steel takes 490 J/kg K in the mean from 20 to 200 C. */
  @Test
  void aTonneOfSteelToTwoHundredDegrees() {
    assertThat(HeatUse.ovenKWh(1000, 0, 2, 0, 200, 30))
        .isCloseTo(1000 * 490 * 180 / 3.6e6, within(0.1));
  }

  /** EN 1999-1-2 (from memory): aluminium takes 948 J/kg K in the mean from 20 to 200 C. */
  @Test
  void aluminiumTakesNearlyTwiceAsMuch() {
    assertThat(HeatUse.ovenKWh(0, 1000, 2, 0, 200, 30))
        .isCloseTo(1000 * 948 * 180 / 3.6e6, within(0.1));
  }

  /** 100 mm panels, 0.35 Btu/h ft2 F = 1.987 W/m2 K of a published oven heat-load note. */
  @Test
  void wallsLoseHeatAsLongAsTheBatchIsIn() {
    assertThat(HeatUse.ovenKWh(0, 0, OvenPanel.uWM2K(100), 50, 200, 60))
        .isCloseTo(1.987 * 50 * 0.18, within(0.01));
    assertThat(HeatUse.ovenKWh(0, 0, OvenPanel.uWM2K(100), 50, 200, 30))
        .isCloseTo(1.987 * 50 * 0.09, within(0.01));
  }

  /**
   * Steel from 20 to 450 C takes 232.3 kJ/kg (EN 1993-1-2), zinc 295 kJ/kg with melting (handbook
   * values): with 60 kg of zinc to the tonne 69.5 kWh.
   */
  @Test
  void aTonneOfSteelInTheKettle() {
    assertThat(HeatUse.dipKWh(1000, 60, 450)).isCloseTo(69.5, within(0.2));
  }
}
