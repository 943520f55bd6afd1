package spangle.intake.read;

import spangle.intake.problem.Meanwhile;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.problem.Severity;

/**
 * Takes problems of one file while it is read, and knows how grave a refused value is there: in a
 * job file the row is left out, in the shop file nothing can be planned.
 */
final class Notes {
  private final Problems problems;
  private final boolean essential;
  private int refusals;
  private int count;

  Notes(Problems problems, boolean essential) {
    this.problems = problems;
    this.essential = essential;
  }

  /** The same list, counted anew: for one row. */
  Notes forRow() {
    return new Notes(problems, essential);
  }

  void add(
      ProblemCode code,
      Place place,
      String field,
      String value,
      String limit,
      String why,
      String remedy) {
    boolean refused = code.severity() == Severity.REFUSED;
    Severity severity = refused && essential ? Severity.STOP : code.severity();
    Meanwhile meanwhile = refused && essential ? Meanwhile.STOPPED : code.meanwhile();
    add(new Problem(code, severity, place, field, value, limit, why, remedy, meanwhile));
  }

  void add(Problem problem) {
    count++;
    if (problem.meanwhile() == Meanwhile.ROW_REFUSED || problem.severity() == Severity.STOP) {
      refusals++;
    }
    problems.add(problem);
  }

  /** Problems noted here. */
  int count() {
    return count;
  }

  /** Whether the row or entry cannot be used. */
  boolean refused() {
    return refusals > 0;
  }
}
