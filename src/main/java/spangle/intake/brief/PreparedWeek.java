package spangle.intake.brief;

import java.util.List;
import spangle.intake.week.WeekInput;
import spangle.plan.Brief;
import spangle.plan.Held;
import spangle.plan.PartFacts;

/**
 * A week ready to be planned. Every part row that was accepted is in the brief's lots or held, with
 * all its pieces.
 *
 * @param input what was read
 * @param brief what the solver may know
 * @param parts measured parts, held ones among them
 * @param held parts a gate keeps out
 */
public record PreparedWeek(WeekInput input, Brief brief, List<PartFacts> parts, List<Held> held) {
  /** Copies the lists. */
  public PreparedWeek {
    parts = List.copyOf(parts);
    held = List.copyOf(held);
  }
}
