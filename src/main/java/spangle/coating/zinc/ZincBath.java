package spangle.coating.zinc;

import spangle.measure.Limits;

/**
 * A kettle's zinc.
 *
 * @param lengthMm inside length
 * @param widthMm inside width
 * @param depthMm zinc over the floor, mm
 * @param celsius bath temperature
 */
public record ZincBath(double lengthMm, double widthMm, double depthMm, double celsius) {
  /**
   * A part with more zinc than this over it, mm, does not ask for the level: the dips of a week
   * take some tens of millimetres out of a bath (common practice: it is filled up weekly).
   */
  public static final double DEEP_MM = 250;

  private static final double MELTS_C = 419.5;
  private static final double MM3_PER_M3 = 1e9;

  /** Checks the limits. */
  public ZincBath {
    Limits.above(lengthMm, 0, "a kettle length", "mm");
    Limits.above(widthMm, 0, "a kettle width", "mm");
    Limits.above(depthMm, 0, "a zinc depth", "mm");
    Limits.between(celsius, MELTS_C, 650, "a bath temperature", "C");
  }

  /** Density of the melt: 6590 - 0.97 (T - 419) kg/m3 (published handbook fit). */
  public double densityKgM3() {
    return 6590 - 0.97 * (celsius - 419);
  }

  /** Mass of the melt, kg. */
  public double massKg() {
    return lengthMm * widthMm * depthMm / MM3_PER_M3 * densityKgM3();
  }

  /** How far the level sinks when so much zinc leaves, mm. */
  public double levelDropMm(double zincKg) {
    return zincKg / densityKgM3() * MM3_PER_M3 / (lengthMm * widthMm);
  }

  /** Zinc that brings the level up by so much, kg. */
  public double topUpKg(double riseMm) {
    return riseMm * lengthMm * widthMm / MM3_PER_M3 * densityKgM3();
  }

  /** Whole ingots that bring the level up by at least so much; none for a rise of nothing. */
  public int ingots(double riseMm, double ingotKg) {
    Limits.above(ingotKg, 0, "an ingot", "kg");
    return (int) Math.ceil(Math.max(0, topUpKg(riseMm)) / ingotKg - 1e-9);
  }

  /** Zinc that may leave before the level has sunk to a depth over the floor, kg; at least 0. */
  public double kgUntilDepth(double leastDepthMm) {
    return Math.max(0, topUpKg(depthMm - leastDepthMm));
  }

  /**
   * Least zinc depth over the floor that still covers a part.
   *
   * @param partDepthMm how deep the part hangs, top to bottom
   * @param coverMm zinc wanted over its top
   * @param drossMm dross and clearance kept free under it
   */
  public static double leastDepthMm(double partDepthMm, double coverMm, double drossMm) {
    return partDepthMm + coverMm + drossMm;
  }

  /**
   * Fall of the bath's temperature by one dip when the burners give nothing meanwhile, K.
   *
   * @param heat what the dip takes
   */
  public double dropK(DipHeat heat) {
    return heat.totalKJ() / (massKg() * DipHeat.LIQUID_ZINC_KJ_KG_K);
  }
}
