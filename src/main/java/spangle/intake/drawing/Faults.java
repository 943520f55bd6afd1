package spangle.intake.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;

/** Notes what a drawing has that cannot be used, alike things counted and not listed one by one. */
final class Faults {
  private record Left(int line, int count) {}

  private final String file;
  private final Problems problems;
  private Left hatches = new Left(0, 0);
  private final Map<String, Left> left = new LinkedHashMap<>();
  private final Map<String, Left> broken = new LinkedHashMap<>();

  Faults(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  String file() {
    return file;
  }

  Problems problems() {
    return problems;
  }

  /** An entity nobody here can draw. */
  void notRead(String type, int line) {
    String shown = type.length() <= 40 ? type : type.substring(0, 37) + "...";
    count(left, shown, line);
  }

  /** An entity that is wrong in itself. */
  void broken(String why, int line) {
    count(broken, why, line);
  }

  /** A hatch kept as a block of lines. */
  void hatch(int line) {
    hatches = new Left(hatches.count == 0 ? line : hatches.line, hatches.count + 1);
  }

  private static void count(Map<String, Left> counted, String key, int line) {
    String kept =
        counted.containsKey(key) || counted.size() < DrawingLimits.LISTED ? key : "others";
    Left before = counted.get(kept);
    counted.put(kept, before == null ? new Left(line, 1) : new Left(before.line, before.count + 1));
  }

  /** Says all that was counted. */
  void say() {
    left.forEach(
        (type, l) ->
            note(
                ProblemCode.DRAWING_LEFT_OUT,
                l.line,
                type,
                l.count + " x " + type + ": no line this program can measure; not counted",
                "explode it into lines and arcs before exporting, if it is to be cut"));
    broken.forEach(
        (why, l) ->
            note(
                ProblemCode.DRAWING_LEFT_OUT,
                l.line,
                "",
                l.count + " x left out: " + why,
                "draw it again, or export the drawing once more"));
    if (hatches.count > 0) {
      note(
          ProblemCode.DRAWING_NOTE,
          hatches.line,
          "",
          hatches.count + " hatch(es) kept as blocks of lines; a hatch is not cut",
          "nothing, unless these lines are to be cut");
    }
  }

  void note(ProblemCode code, int line, String value, String why, String remedy) {
    problems.add(code, Place.at(file, line, 0), "drawing", value, "", why, remedy);
  }
}
