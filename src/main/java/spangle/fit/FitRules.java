package spangle.fit;

import spangle.measure.Interval;

/**
 * What a shop may set about fitting.
 *
 * @param drainDeg lengthwise angles at which zinc runs off well; they never change a verdict
 * @param overlapMm how far the two dips of a two-dip part overlap, along the part
 * @param twoDips whether two dips may be thought of at all (never in an oven or a booth)
 */
public record FitRules(Interval drainDeg, double overlapMm, boolean twoDips) {
  /**
   * At least 10, at most 45 degrees for bars and sections (trade guides for galvanizing); 300 mm of
   * overlap (common practice: no published figure is known).
   */
  public static final FitRules KETTLE = new FitRules(new Interval(10, 45), 300, true);

  /** For ovens, booths, doors and carriers: the part goes in whole or not at all. */
  public static final FitRules ROOM = new FitRules(new Interval(0, 90), 0, false);

  /** Below this width a range of angles is hard to hold on slings (common practice). */
  public static final double NARROW_DEG = 2;

  /** Checks the overlap. */
  public FitRules {
    if (!(overlapMm >= 0) || Double.isInfinite(overlapMm)) {
      throw new IllegalArgumentException("overlap must be 0 mm or more, not " + overlapMm);
    }
  }

  /** What the upright size is called there: a bath is deep, a room high. */
  public String upright() {
    return twoDips ? "depth" : "height";
  }

  /** The same rules with another overlap. */
  public FitRules withOverlapMm(double otherMm) {
    return new FitRules(drainDeg, otherMm, twoDips);
  }
}
