package spangle.intake.week;

import java.util.List;
import java.util.Set;
import spangle.equipment.Span;

/**
 * Hours that may be worked besides the shifts where somebody says so. No plan uses them; they are
 * only what may be offered.
 *
 * @param days 0 = Monday .. 6 = Sunday
 * @param hours minutes of the day
 * @param breaks minutes of the day
 * @param lines ids of the lines that then work together; empty = all
 * @param people how many must stay; 0 where it is not said
 */
public record Overtime(
    Set<Integer> days, Span hours, List<Span> breaks, List<String> lines, int people) {
  /** Copies the collections. */
  public Overtime {
    days = Set.copyOf(days);
    breaks = List.copyOf(breaks);
    lines = List.copyOf(lines);
  }
}
