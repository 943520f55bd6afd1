package spangle.intake.drawing;

import spangle.intake.problem.Meanwhile;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Severity;

/** A doubt about a drawing that keeps its part out of the plan until a person answers. */
final class DrawingDoubt {
  private DrawingDoubt() {}

  static Problem of(String file, String why, String remedy) {
    return new Problem(
        ProblemCode.DRAWING_DOUBT,
        Severity.ASK,
        Place.file(file),
        "drawing",
        "",
        "",
        why,
        remedy,
        Meanwhile.GATE_SHUT);
  }
}
