package spangle.coating.heat;

import spangle.measure.Limits;

/**
 * Sheet or wall as the oven sees it. Lumped: at these thicknesses the inside is never behind the
 * surface (Biot number below 0.1 up to 250 mm of steel at 40 W/m2 K).
 *
 * @param metal what it is made of
 * @param thicknessMm full thickness
 * @param oneSide true when only one face meets moving air, as the wall of a closed box
 */
public record HeatedPart(Metal metal, double thicknessMm, boolean oneSide) {
  /** Thickest section any formula here is used for, mm. */
  private static final double THICKEST_MM = 250;

  /** Checks the thickness. */
  public HeatedPart {
    Limits.above(thicknessMm, 0, "a thickness", "mm");
    Limits.between(thicknessMm, 0, THICKEST_MM, "a thickness the lumped model holds for", "mm");
  }

  /** A part heated from both sides. */
  public static HeatedPart bothSides(Metal metal, double thicknessMm) {
    return new HeatedPart(metal, thicknessMm, false);
  }

  /** Volume over heated surface, m. */
  public double heatLengthM() {
    return thicknessMm / (oneSide ? 1000 : 2000);
  }

  /** The part's heat capacity per heated face as this transfer reckons it. */
  public ThermalMass thermalMass(HeatTransfer transfer) {
    double kgM2 = metal.densityKgM3() * heatLengthM();
    return celsius -> kgM2 * transfer.specificHeatJKgK(metal, celsius);
  }
}
