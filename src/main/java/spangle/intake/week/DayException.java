package spangle.intake.week;

import java.util.List;
import java.util.Optional;
import spangle.equipment.Span;

/**
 * Overtime on one date, or a date on which nobody works.
 *
 * @param day day of the plan, 0 = the first Monday
 * @param hours minutes of the day worked in addition; empty = closed
 * @param breaks minutes of the day on which nobody works in those hours
 * @param lines ids of the lines concerned; empty = all
 * @param why in words
 */
public record DayException(
    int day, Optional<Span> hours, List<Span> breaks, List<String> lines, String why) {
  /** Copies the lists. */
  public DayException {
    breaks = List.copyOf(breaks);
    lines = List.copyOf(lines);
  }
}
