package spangle.intake.week;

import spangle.equipment.Span;

/**
 * A stretch in which one station is not to be had.
 *
 * @param stationId the station or machine
 * @param span minutes from the week's zero; it may last longer than the plan, {@link #NO_END} where
 *     nobody knows how long
 * @param why in words
 * @param topUp whether the zinc is filled up to its usual mark in it; it stands there at its end
 * @param places how many of a station's places it takes, the others work; 0 for all
 */
public record Maintenance(String stationId, Span span, String why, boolean topUp, int places) {
  /** End of a stretch of which nobody knows one. */
  public static final int NO_END = Integer.MAX_VALUE;

  /** A stretch in which no zinc is filled up. */
  public Maintenance(String stationId, Span span, String why) {
    this(stationId, span, why, false, 0);
  }

  /** Whether it leaves some of so many places. */
  public boolean leavesSome(int count) {
    return places > 0 && places < count;
  }
}
