package spangle.report;

import java.util.List;
import spangle.plan.Finding;

/**
 * What waits for a person.
 *
 * @param held parts a gate keeps out of the plan
 * @param questions doubts that do not stop the work
 * @param reasons why jobs are late or left out
 * @param findings what the audit says; empty for a plan that keeps every rule
 */
public record Waiting(
    List<HeldPart> held,
    List<Question> questions,
    List<JobReason> reasons,
    List<Finding> findings) {
  /** Nothing waits. */
  public static final Waiting NOBODY = new Waiting(List.of(), List.of(), List.of(), List.of());

  /** Copies the lists. */
  public Waiting {
    held = List.copyOf(held);
    questions = List.copyOf(questions);
    reasons = List.copyOf(reasons);
    findings = List.copyOf(findings);
  }
}
