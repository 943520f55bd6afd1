package spangle.intake.brief;

import java.util.List;
import java.util.Optional;
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
 * @param gates how the gates stand for every measured part, in the order of the parts
 */
public record PreparedWeek(
    WeekInput input, Brief brief, List<PartFacts> parts, List<Held> held, List<PartGates> gates) {
  /** Copies the lists. */
  public PreparedWeek {
    parts = List.copyOf(parts);
    held = List.copyOf(held);
    gates = List.copyOf(gates);
  }

  /** The gates of a part. */
  public Optional<PartGates> gates(String jobId, String partId) {
    return gates.stream()
        .filter(g -> g.jobId().equals(jobId) && g.partId().equals(partId))
        .findFirst();
  }
}
