package spangle.coating.zinc;

import spangle.measure.Limits;
import spangle.measure.LowLikelyHigh;

/**
 * Minutes in and around the kettle (common practice inside the published 3-10 min): longer does not
 * thicken ordinary steel's coating, only silicon steels'.
 */
public final class DipTimes {
  private static final double BASE_MIN = 2;
  private static final double MIN_PER_MM = 0.5;
  private static final double LEAST_MIN = 3;

  /** Skim, lower, raise and clear (common practice). */
  private static final LowLikelyHigh AROUND_MIN = new LowLikelyHigh(5, 7.5, 10);

  private DipTimes() {}

  /** Immersion by the thickest piece on the beam: 2 min + 0.5 min/mm, at least 3. */
  public static double immersionMin(double thickestMm) {
    Limits.above(thickestMm, 0, "a thickness", "mm");
    return Math.max(LEAST_MIN, BASE_MIN + MIN_PER_MM * thickestMm);
  }

  /** Dip to dip: immersion and everything around it. */
  public static LowLikelyHigh cycleMin(double thickestMm) {
    return AROUND_MIN.map(around -> around + immersionMin(thickestMm));
  }
}
