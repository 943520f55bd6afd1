package spangle.plan;

import java.util.List;
import java.util.Optional;
import spangle.fit.hang.HangPattern;

/**
 * One filled carrier on its way through the line.
 *
 * @param id number on the sheet, such as "P07" or "Z03"
 * @param carrierId {@link CarrierSpec#id()}
 * @param carrierNumber which one of those owned, from 1
 * @param lotIds what hangs on it
 * @param visits station visits beside the machine, in time order
 * @param pattern where each piece hangs; empty for baskets and for loads of a lot that travels
 *     alone
 */
public record PlannedLoad(
    String id,
    String carrierId,
    int carrierNumber,
    List<String> lotIds,
    List<PlannedVisit> visits,
    Optional<HangPattern> pattern) {
  /** Copies the lists. */
  public PlannedLoad {
    lotIds = List.copyOf(lotIds);
    visits = List.copyOf(visits);
  }

  /** The same load with these visits. */
  public PlannedLoad visiting(List<PlannedVisit> others) {
    return new PlannedLoad(id, carrierId, carrierNumber, lotIds, others, pattern);
  }

  /** The same load with only these lots on it. */
  public PlannedLoad carrying(List<String> others) {
    return new PlannedLoad(id, carrierId, carrierNumber, others, visits, pattern);
  }

  /**
   * A visit to a station.
   *
   * @param stationId {@link StationSpec#id()}
   * @param place which of those alike, from 1
   * @param setupStartMin start of the change before it (equal to start where there is none)
   * @param startMin in
   * @param endMin out
   */
  public record PlannedVisit(
      String stationId, int place, int setupStartMin, int startMin, int endMin) {
    /** The visit so many minutes later, sooner where negative. */
    public PlannedVisit later(int minutes) {
      return new PlannedVisit(
          stationId, place, setupStartMin + minutes, startMin + minutes, endMin + minutes);
    }
  }
}
