package spangle.coating.heat;

import spangle.measure.Limits;

/**
 * One overall coefficient and one specific heat: the form that can be checked with a pocket
 * calculator, t = rho c L / U ln((To - Ti) / (To - T)).
 *
 * @param uWM2K convection and radiation together, W/m2 K
 */
public record ConstantU(double uWM2K) implements HeatTransfer {
  /** Checks the limits. */
  public ConstantU {
    Limits.above(uWM2K, 0, "an overall coefficient", "W/m2K");
    Limits.between(uWM2K, 0, 5000, "an overall coefficient", "W/m2K");
  }

  @Override
  public double coefficientWM2K(double surroundingsC, double metalC) {
    return uWM2K;
  }

  @Override
  public double specificHeatJKgK(Metal metal, double celsius) {
    return metal.constantHeatJKgK();
  }
}
