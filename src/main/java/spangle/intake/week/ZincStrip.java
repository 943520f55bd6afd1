package spangle.intake.week;

/**
 * Where and how long the zinc of rejected work comes off in acid, before it goes the whole way
 * again.
 *
 * @param stationId pickling tank of the kettle line
 * @param minutes in it, before the pickling itself
 */
public record ZincStrip(String stationId, int minutes) {
  /**
   * About 34 HRC; stronger steel that has been in acid once does not go into it again unless a
   * person says so, for hydrogen (ISO 14713-2, from memory).
   */
  public static final double STRONGEST_MPA = 1_000;
}
