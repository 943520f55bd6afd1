package spangle.plan;

import spangle.equipment.Span;

/**
 * Some places of a station that are out of use for a while: of five pickling tanks two. They are
 * counted from the last.
 *
 * @param places how many
 * @param span when
 */
public record PlacesOut(int places, Span span) {
  /** Whether a stay at that place, counted from 1, of a station of so many meets it. */
  public boolean meets(int place, int alike, int startMin, int endMin) {
    return place > alike - places && startMin < span.endMin() && endMin > span.startMin();
  }
}
