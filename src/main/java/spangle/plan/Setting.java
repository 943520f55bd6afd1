package spangle.plan;

/**
 * One setting an oven can run at, or the one temperature of a kettle.
 *
 * @param index place in the line's list of settings, from 0
 * @param name words for the sheet, such as "190 C"
 * @param celsius air or bath temperature
 */
public record Setting(int index, String name, double celsius) {}
