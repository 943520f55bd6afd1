package spangle.estimate;

import spangle.coating.heat.Metal;
import spangle.coating.heat.OvenEnergy;
import spangle.coating.heat.OvenPanel;
import spangle.coating.zinc.DipHeat;

/**
 * Heat a batch takes: into the work, into the carriers it hangs on, through the oven walls while it
 * is in, and for a dip into the zinc that leaves on it. Exhaust, empty hours and a kettle's surface
 * are not in it: they are the same whatever the plan.
 */
public final class HeatUse {
  private static final double J_PER_KWH = 3.6e6;

  private HeatUse() {}

  /**
   * One stay in an oven, kWh.
   *
   * @param steelKg steel of the parts and of the carriers
   * @param aluminiumKg aluminium of the parts
   * @param wallWM2K heat the oven's walls lose per m2 and kelvin
   * @param wallM2 inside surface of the oven, floor and doors included
   * @param ovenC setting
   * @param minutes in the oven
   */
  public static double ovenKWh(
      double steelKg,
      double aluminiumKg,
      double wallWM2K,
      double wallM2,
      double ovenC,
      double minutes) {
    double metalJ =
        steelKg * Metal.STEEL.heatJKg(OvenEnergy.HALL_C, ovenC)
            + aluminiumKg * Metal.ALUMINIUM.heatJKg(OvenEnergy.HALL_C, ovenC);
    return metalJ / J_PER_KWH
        + OvenPanel.lossKW(wallWM2K, wallM2, ovenC, OvenEnergy.HALL_C) * minutes / 60;
  }

  /**
   * One dip, kWh.
   *
   * @param steelKg steel of the parts, the beam or the basket
   * @param zincKg zinc that leaves on the work
   * @param bathC bath temperature
   */
  public static double dipKWh(double steelKg, double zincKg, double bathC) {
    return DipHeat.of(steelKg, zincKg, OvenEnergy.HALL_C, OvenEnergy.HALL_C, bathC).totalKWh();
  }
}
