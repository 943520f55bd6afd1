package spangle.intake.drawing;

import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.UnreadableException;
import spangle.part.ShapeException;

/** Says why a drawing cannot be used. */
final class Unreadable {
  private Unreadable() {}

  static void note(UnreadableException broken, Problems problems) {
    ProblemCode code =
        broken.code() == ProblemCode.FILE_UNREADABLE
            ? ProblemCode.DRAWING_UNREADABLE
            : broken.code();
    problems.add(
        code, broken.place(), "drawing", "", broken.limit(), broken.why(), broken.remedy());
  }

  static void note(String file, ShapeException impossible, Problems problems) {
    problems.add(
        ProblemCode.DRAWING_UNREADABLE,
        Place.file(file),
        "drawing",
        impossible.value(),
        impossible.limit(),
        impossible.what() + " " + impossible.value() + " is not " + impossible.limit(),
        impossible.remedy());
  }
}
