package spangle.coating.heat;

import spangle.measure.Limits;

/**
 * One line of a data sheet: so many minutes with the metal at this temperature.
 *
 * @param metalC metal temperature
 * @param minutes least time at it
 */
public record CurePoint(double metalC, double minutes) {
  /** Checks the limits. */
  public CurePoint {
    Limits.between(metalC, 40, 400, "a cure temperature", "C");
    Limits.above(minutes, 0, "a cure time", "min");
    Limits.between(minutes, 0, 1440, "a cure time", "min");
  }
}
