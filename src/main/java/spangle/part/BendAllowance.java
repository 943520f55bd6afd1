package spangle.part;

/**
 * Length a bend takes out of a blank (DIN 6935, from memory): the neutral fibre lies at k times
 * half the thickness from the inside, k = 0.65 + 0.5 lg(r/t), at most 1.
 */
public final class BendAllowance {
  private BendAllowance() {}

  /**
   * What is added to the outside lengths of both legs to get the flat length; usually below zero.
   *
   * @param bendAngleDeg how far the sheet is turned, above 0 and at most 165 (90 for a square bend)
   * @param insideRadiusMm inside radius, above 0
   * @param thicknessMm sheet thickness
   */
  public static double correctionMm(
      double bendAngleDeg, double insideRadiusMm, double thicknessMm) {
    double arcMm = arcMm(bendAngleDeg, insideRadiusMm, thicknessMm);
    double reach = bendAngleDeg <= 90 ? Math.tan(Math.toRadians(bendAngleDeg) / 2) : 1;
    return arcMm - 2 * (insideRadiusMm + thicknessMm) * reach;
  }

  /**
   * Flat length of the bent zone between its two tangent lines: the neutral fibre.
   *
   * @param bendAngleDeg how far the sheet is turned, above 0 and at most 165
   * @param insideRadiusMm inside radius, above 0
   * @param thicknessMm sheet thickness
   */
  public static double arcMm(double bendAngleDeg, double insideRadiusMm, double thicknessMm) {
    Require.length(insideRadiusMm, "inside bend radius");
    Require.length(thicknessMm, "thickness");
    if (!(bendAngleDeg > 0 && bendAngleDeg <= 165)) {
      throw new ShapeException(
          "bend angle",
          bendAngleDeg,
          "above 0 and at most 165 degrees",
          "give how far it is turned");
    }
    double turned = Math.toRadians(bendAngleDeg);
    return turned * (insideRadiusMm + factor(insideRadiusMm / thicknessMm) * thicknessMm / 2);
  }

  /** Correction of a square bend whose inside radius equals the thickness, the common practice. */
  public static double squareBendMm(double thicknessMm) {
    return correctionMm(90, thicknessMm, thicknessMm);
  }

  private static double factor(double radiusToThickness) {
    return Math.max(0, Math.min(1, 0.65 + 0.5 * Math.log10(radiusToThickness)));
  }
}
