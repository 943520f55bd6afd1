package spangle.plan.event;

import java.util.stream.Stream;
import spangle.equipment.Span;
import spangle.plan.Brief;
import spangle.plan.StationSpec;

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

  /** Whether that place of the station is among those out of use, counted from 1. */
  boolean shuts(Brief brief, int place) {
    return places == 0 || place > alike(brief) - places;
  }

  private int alike(Brief brief) {
    return brief.lines().stream()
        .flatMap(l -> Stream.concat(l.before().stream(), l.after().stream()))
        .filter(s -> s.id().equals(stationId))
        .mapToInt(StationSpec::alike)
        .findFirst()
        .orElse(1);
  }

  /** Whether a stay touches it. */
  public boolean touches(int startMin, int endMin) {
    return startMin < untilMin && endMin > fromMin;
  }
}
