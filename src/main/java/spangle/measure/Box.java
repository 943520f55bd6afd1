package spangle.measure;

/**
 * Outside size of a body, in mm. Which side is up is the business of whoever uses it.
 *
 * @param lengthMm length, above zero
 * @param widthMm width, above zero
 * @param heightMm height, above zero
 */
public record Box(double lengthMm, double widthMm, double heightMm) {
  /** Checks that all three sides are finite and above zero. */
  public Box {
    requireSide(lengthMm, "length");
    requireSide(widthMm, "width");
    requireSide(heightMm, "height");
  }

  private static void requireSide(double sideMm, String name) {
    if (!(sideMm > 0) || Double.isInfinite(sideMm)) {
      throw new MeasureException(
          Double.toString(sideMm), "a " + name + " in mm", "every side of a box is above zero");
    }
  }

  /** Longest side in mm. */
  public double longestMm() {
    return Math.max(lengthMm, Math.max(widthMm, heightMm));
  }

  /** Shortest side in mm. */
  public double shortestMm() {
    return Math.min(lengthMm, Math.min(widthMm, heightMm));
  }

  /** The side that is neither longest nor shortest, in mm. */
  public double middleMm() {
    return Math.max(Math.min(lengthMm, widthMm), Math.min(Math.max(lengthMm, widthMm), heightMm));
  }

  /** Volume of the hull in m3. */
  public double volumeM3() {
    return lengthMm * widthMm * heightMm * 1e-9;
  }
}
