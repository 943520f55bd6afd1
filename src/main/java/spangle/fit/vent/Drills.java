package spangle.fit.vent;

/** Sizes holes are made in: whole millimetres to 32, then steps of 5 (common practice). */
public final class Drills {
  private static final int LARGEST_DRILL_MM = 32;
  private static final int CUT_STEP_MM = 5;
  private static final double SAME_MM = 1e-6;

  private Drills() {}

  /** The next size that is not smaller, in mm. */
  public static double nextMm(double diameterMm) {
    double whole = Math.ceil(diameterMm - SAME_MM);
    return whole <= LARGEST_DRILL_MM
        ? whole
        : Math.ceil((diameterMm - SAME_MM) / CUT_STEP_MM) * CUT_STEP_MM;
  }

  /** Diameter of one hole of an area, in mm. */
  public static double diameterMm(double areaMm2) {
    return Math.sqrt(4 * areaMm2 / Math.PI);
  }
}
