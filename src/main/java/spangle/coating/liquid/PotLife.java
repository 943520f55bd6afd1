package spangle.coating.liquid;

import spangle.measure.Limits;

/**
 * How long a two-pack mix can be sprayed: half as long for every 10 C more, twice as long for every
 * 10 C less (published trade note: 2 h at 20 C, 1 h at 30 C, 0.5 h at 40 C).
 *
 * @param minutes from the data sheet
 * @param atC temperature it is given for
 */
public record PotLife(double minutes, double atC) {
  /** Temperature data sheets mostly give it for, C. */
  public static final double USUAL_C = 20;

  private static final double HALVES_EVERY_K = 10;

  /** Checks the limits. */
  public PotLife {
    Limits.above(minutes, 0, "a pot life", "min");
    Limits.between(minutes, 0, 10_000, "a pot life", "min");
    Limits.between(atC, -10, 60, "a paint temperature", "C");
  }

  /** Minutes at another temperature of the paint. */
  public double minutesAt(double celsius) {
    Limits.between(celsius, -10, 60, "a paint temperature", "C");
    return minutes * Math.pow(2, (atC - celsius) / HALVES_EVERY_K);
  }
}
