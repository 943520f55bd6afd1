package spangle.intake.week;

import spangle.equipment.Span;

/**
 * A stretch in which one station is not to be had.
 *
 * @param stationId the station or machine
 * @param span minutes from the week's zero
 * @param why in words
 */
public record Maintenance(String stationId, Span span, String why) {}
