package spangle.coating.powder;

import spangle.measure.Limits;
import spangle.measure.LowLikelyHigh;
import spangle.measure.MeasureException;

/**
 * Overspray caught and sprayed again, in the steady state of a long run of one colour: each kg
 * sprayed leaves e on the work, and r of the rest comes back, so that e / (1 - r (1 - e)) of every
 * kg drawn ends on the work.
 *
 * @param firstPass share that stays on the first pass, e
 * @param capture share of the overspray that is caught and good to spray again, r; 0 is to waste
 */
public record Reclaim(double firstPass, double capture) {
  /** Capture of a cyclone (published trade figure, about). */
  public static final double CYCLONE = 0.90;

  /**
   * What shops really reach with reclaim; fines and the colour's end take the rest (published; "95
   * to 99 % is not realistic").
   */
  public static final LowLikelyHigh REAL_USE = new LowLikelyHigh(0.65, 0.75, 0.85);

  /** Checks the shares. */
  public Reclaim {
    Limits.share(firstPass, "a share that stays on the first pass");
    if (!(capture >= 0 && capture <= 1)) {
      throw new MeasureException(
          Double.toString(capture), "a capture of 0 to 1", "0.9 is nine tenths of the overspray");
    }
  }

  /** Share of the powder drawn that ends on the work. */
  public double use() {
    return firstPass / (1 - capture * (1 - firstPass));
  }

  /** Whether no shop is known to reach this for long. */
  public boolean beyondPractice() {
    return use() > REAL_USE.high();
  }
}
