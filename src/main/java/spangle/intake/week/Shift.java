package spangle.intake.week;

import java.util.List;
import java.util.Set;
import spangle.equipment.Span;

/**
 * A stretch of work on some days of every week.
 *
 * @param days 0 = Monday .. 6 = Sunday
 * @param hours minutes of the day; an end past 1440 runs into the next day
 * @param breaks minutes of the day
 * @param lines ids of the lines it mans; empty = all
 */
public record Shift(Set<Integer> days, Span hours, List<Span> breaks, List<String> lines) {
  /** Copies the collections. */
  public Shift {
    days = Set.copyOf(days);
    breaks = List.copyOf(breaks);
    lines = List.copyOf(lines);
  }
}
