package spangle.coating.liquid;

import spangle.measure.Interval;
import spangle.measure.Limits;

/**
 * Several coats of one paint: each follows the one before it inside the recoat window, neither into
 * wet paint nor onto a coat that has grown too hard to hold the next.
 *
 * @param coats how many
 * @param recoatMin minutes from coat to coat, least and most; the most may be infinite
 */
public record CoatSchedule(int coats, Interval recoatMin) {
  /** Checks the limits. */
  public CoatSchedule {
    Limits.between(coats, 1, 20, "a number of coats", "");
    Limits.between(recoatMin.min(), 0, 1e6, "a least recoat time", "min");
  }

  /** Minutes from the first coat to the last, soonest and latest. */
  public Interval lastCoatMin() {
    int gaps = coats - 1;
    return gaps == 0
        ? new Interval(0, 0)
        : new Interval(gaps * recoatMin.min(), gaps * recoatMin.max());
  }
}
