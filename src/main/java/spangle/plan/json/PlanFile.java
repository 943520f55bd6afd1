package spangle.plan.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Plan;

/**
 * All of a plan that is kept: enough for a stranger's program to check it against its week folder.
 *
 * @param format {@link #FORMAT}
 * @param version letter of the plan, "A" for the first; a reprint after a change gets the next
 * @param weekFolder the week folder, seen from the folder the plan lies in
 * @param inputs every file it was made from
 * @param overlay what was different from the week folder, for a what-if; empty for a plan of the
 *     week as it is
 * @param replanned from which plan and events it was made in the middle of a week; empty for a plan
 *     made from the beginning
 * @param gates every gate that was looked at and its state; the parts behind a shut gate are not in
 *     the brief
 * @param brief what the solver was told
 * @param plan what it answered
 * @param findings what the audit said when the plan was made; empty for a plan that keeps every
 *     rule
 * @param estimates what the plan costs beside the shop's own work ({@code sent_out}: mass and
 *     charge of work at another firm), what overtime would buy ({@code overtime}), and what is kept
 *     ready for rejects ({@code reject_allowance}); empty where there is nothing of the kind
 * @param yardstick how good the plan is; empty where that was not asked
 */
public record PlanFile(
    String format,
    String version,
    String weekFolder,
    List<InputDigest> inputs,
    Optional<OverlayDigest> overlay,
    Optional<Replanned> replanned,
    List<Gate> gates,
    Brief brief,
    Plan plan,
    List<Finding> findings,
    Optional<JsonNode> estimates,
    Optional<PlanYardstick> yardstick) {
  /** Name and number of this file format. */
  public static final String FORMAT = "spangle-plan/1";

  /** Copies the lists and refuses another format. */
  public PlanFile {
    if (!format.equals(FORMAT)) {
      throw new IllegalArgumentException(
          "the format is \""
              + format
              + "\"; this program reads \""
              + FORMAT
              + "\": the plan was written by another version of the program, so plan the week"
              + " again");
    }
    inputs = List.copyOf(inputs);
    gates = List.copyOf(gates);
    findings = List.copyOf(findings);
  }

  /** A plan made from the beginning that nobody asked how good it is. */
  public PlanFile(
      String format,
      String version,
      String weekFolder,
      List<InputDigest> inputs,
      Optional<OverlayDigest> overlay,
      List<Gate> gates,
      Brief brief,
      Plan plan,
      List<Finding> findings,
      Optional<JsonNode> estimates) {
    this(
        format,
        version,
        weekFolder,
        inputs,
        overlay,
        Optional.empty(),
        gates,
        brief,
        plan,
        findings,
        estimates,
        Optional.empty());
  }

  /** Another plan beside this one, to be compared with it: of its findings nothing is said. */
  public PlanFile with(Brief otherBrief, Plan otherPlan) {
    return new PlanFile(
        format,
        version,
        weekFolder,
        inputs,
        overlay,
        gates,
        otherBrief,
        otherPlan,
        List.of(),
        Optional.empty());
  }
}
