package spangle.report.page;

/**
 * A station on a load's way.
 *
 * @param name station
 * @param clock start
 * @param day day, only where it differs from the stop before
 * @param machine true for the oven or kettle
 */
public record Stop(String name, String clock, String day, boolean machine) {}
