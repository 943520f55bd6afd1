package spangle.plan;

/**
 * What a lot needs at a station beside the machine. A load's visit takes the largest fixed minutes
 * of its lots plus the sum of their variable minutes, rounded up; a station no lot of the load
 * names is passed by.
 *
 * @param stationId {@link StationSpec#id()}
 * @param fixedMin minutes however much hangs there
 * @param variableMin minutes this lot adds (its pieces or square metres)
 */
public record Visit(String stationId, int fixedMin, double variableMin) {}
