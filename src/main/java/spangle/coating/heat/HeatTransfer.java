package spangle.coating.heat;

/** How heat passes between the air and walls around a part and its faces. */
public sealed interface HeatTransfer permits ConvectionRadiation, ConstantU {
  /**
   * Heat flow per face and per kelvin between surroundings and metal, W/m2 K.
   *
   * @param surroundingsC temperature of air and walls
   * @param metalC temperature of the metal
   */
  double coefficientWM2K(double surroundingsC, double metalC);

  /** Specific heat that belongs to this way of reckoning, J/kg K. */
  double specificHeatJKgK(Metal metal, double celsius);
}
