package spangle.report;

/**
 * A stretch in which people keep a station to themselves: skimming, a top-up, a filter change, a
 * breakdown.
 *
 * @param stationId the station, oven or kettle
 * @param startMin minutes from the week's zero
 * @param endMin its end
 * @param words what is done
 */
public record Stop(String stationId, int startMin, int endMin, String words) {}
