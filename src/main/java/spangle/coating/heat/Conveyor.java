package spangle.coating.heat;

import spangle.measure.Limits;

/** A moving line: speed from output, oven length from dwell. */
public final class Conveyor {
  private Conveyor() {}

  /**
   * Speed in units of the pitch's length per minute.
   *
   * @param partsPerHour wanted output
   * @param partsPerCarrier parts on one carrier
   * @param pitch distance from carrier to carrier, any unit of length
   */
  public static double speedPerMinute(double partsPerHour, double partsPerCarrier, double pitch) {
    Limits.above(partsPerHour, 0, "an output", "parts/h");
    Limits.above(partsPerCarrier, 0, "a number of parts per carrier", "");
    Limits.above(pitch, 0, "a pitch", "");
    return partsPerHour / partsPerCarrier / 60 * pitch;
  }

  /** Length of oven that gives a dwell, in the speed's own unit of length. */
  public static double ovenLength(double speedPerMinute, double dwellMinutes) {
    return speedPerMinute * dwellMinutes;
  }
}
