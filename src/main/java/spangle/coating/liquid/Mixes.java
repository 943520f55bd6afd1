package spangle.coating.liquid;

import spangle.measure.Limits;
import spangle.measure.MeasureException;

/**
 * Paint mixed in portions that are sprayed before they thicken.
 *
 * @param number how many mixes
 * @param litresEach size of each, equal
 * @param mostLitres largest mix that is used inside its pot life
 * @param minutesEach spraying one of them
 */
public record Mixes(int number, double litresEach, double mostLitres, double minutesEach) {

  /**
   * The fewest equal mixes that are each used inside the pot life.
   *
   * @param litres ready mixture wanted
   * @param potLifeMin pot life at the shop's temperature
   * @param inductionMin rest after mixing before the first shot; counts against the pot life
   * @param litresPerHour what the gun takes
   */
  public static Mixes of(
      double litres, double potLifeMin, double inductionMin, double litresPerHour) {
    Limits.above(litres, 0, "an amount of paint", "l");
    Limits.above(litresPerHour, 0, "a spray rate", "l/h");
    Limits.between(inductionMin, 0, 1440, "a rest after mixing", "min");
    double sprayMin = potLifeMin - inductionMin;
    if (!(sprayMin > 0)) {
      throw new MeasureException(
          inductionMin + " min",
          "a rest after mixing shorter than the pot life",
          "the pot life left to spray in is none: cool the paint or take another");
    }
    double most = litresPerHour * sprayMin / 60;
    double number = Math.ceil(litres / most - 1e-9);
    Limits.between(number, 1, 100_000, "a number of mixes", "");
    double each = litres / number;
    return new Mixes((int) number, each, most, each / litresPerHour * 60);
  }
}
