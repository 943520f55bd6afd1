package spangle.coating.heat;

import spangle.measure.Limits;

/**
 * Convection by a fixed coefficient plus grey radiation from walls at air temperature, with the
 * specific heat of the metal at each temperature.
 *
 * @param hWM2K convection, W/m2 K: free 2-25, forced 25-250 (Incropera et al., Table 1.1); batch
 *     ovens 15-30, high velocity 30-60 (from memory)
 * @param emissivity of the part's surface, 0 to 1
 */
public record ConvectionRadiation(double hWM2K, double emissivity) implements HeatTransfer {
  /** Batch cure oven, common practice, W/m2 K. */
  public static final double USUAL_H_WM2K = 20;

  /** Painted or powdered surface that sees the oven walls; most organic coatings lie near it. */
  public static final double COATED_EMISSIVITY = 0.9;

  /** Bare zinc or bare aluminium, middle of 0.1-0.3 and above (from memory). */
  public static final double BARE_EMISSIVITY = 0.25;

  /** Stefan-Boltzmann constant, W/m2 K4. */
  private static final double STEFAN_BOLTZMANN = 5.67e-8;

  private static final double ZERO_CELSIUS_K = 273.15;

  /** Checks the limits. */
  public ConvectionRadiation {
    Limits.between(hWM2K, 0, 1000, "a convection coefficient", "W/m2K");
    Limits.between(emissivity, 0, 1, "an emissivity", "");
    if (hWM2K == 0) {
      Limits.above(emissivity, 0, "an emissivity without convection", "");
    }
  }

  /** The usual batch oven with coated work. */
  public static ConvectionRadiation usual() {
    return new ConvectionRadiation(USUAL_H_WM2K, COATED_EMISSIVITY);
  }

  /** The usual batch oven with bare zinc or bare aluminium. */
  public static ConvectionRadiation bareMetal() {
    return new ConvectionRadiation(USUAL_H_WM2K, BARE_EMISSIVITY);
  }

  @Override
  public double coefficientWM2K(double surroundingsC, double metalC) {
    double wallK = surroundingsC + ZERO_CELSIUS_K;
    double metalK = metalC + ZERO_CELSIUS_K;
    return hWM2K
        + emissivity * STEFAN_BOLTZMANN * (wallK + metalK) * (wallK * wallK + metalK * metalK);
  }

  @Override
  public double specificHeatJKgK(Metal metal, double celsius) {
    return metal.specificHeatJKgK(celsius);
  }
}
