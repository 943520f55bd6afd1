package spangle.plan.event;

import spangle.equipment.Span;

/**
 * A station that is out of use.
 *
 * @param stationId station, oven or kettle
 * @param fromMin since when
 * @param untilMin until when; {@link Integer#MAX_VALUE} while nobody has said
 * @param places how many of its places, counted from the last; 0 for all
 */
public record Down(String stationId, int fromMin, int untilMin, int places) {
  /** The stretch of it before the end of a plan. */
  public Span span(int horizonMin) {
    return new Span(fromMin, Math.max(fromMin, Math.min(untilMin, horizonMin)));
  }

  /** Whether a stay touches it. */
  public boolean touches(int startMin, int endMin) {
    return startMin < untilMin && endMin > fromMin;
  }
}
