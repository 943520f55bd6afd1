package spangle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import spangle.desk.CheckDesk;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Severity;

/** One problem of the inputs, for people and for programs. */
final class ProblemOut {
  private ProblemOut() {}

  static JsonOut json(Problem problem) {
    return new JsonOut()
        .put("code", problem.code().key())
        .put("severity", problem.severity().word())
        .put("file", problem.place().file())
        .put("line", problem.place().line())
        .put("column", problem.place().column())
        .put("cell", problem.place().cell())
        .put("job", problem.job())
        .put("part", problem.part())
        .put("field", problem.field())
        .put("value", problem.value())
        .put("limit", problem.limit())
        .put("why", problem.why())
        .put("remedy", problem.remedy())
        .put("meanwhile", problem.meanwhile().words())
        .put("ask", problem.ask())
        .put("due_min", problem.dueMin() == Problem.NO_DUE ? null : problem.dueMin());
  }

  /**
   * Says that nothing was done and why, each problem on a line; as JSON also what a refusal always
   * has, with the problems.
   */
  static int refuse(String nothing, List<Problem> problems, boolean json, CommandLine command) {
    PrintWriter err = command.getErr();
    err.println(nothing + (problems.isEmpty() ? "" : ":"));
    problems.forEach(problem -> err.println("  " + line(problem)));
    err.flush();
    if (json) {
      new JsonOut()
          .put("exit_code", ExitCode.REFUSED)
          .put("error", nothing)
          .put("problems", problems.stream().map(ProblemOut::json).toList())
          .print(command.getOut());
    }
    return ExitCode.REFUSED;
  }

  /** On one line: where, what stands there, what is wrong, what would be right, what to do. */
  private static String line(Problem problem) {
    String value = problem.value().isEmpty() ? "" : "\"" + problem.value() + "\"";
    String what = (problem.field() + " " + value).strip();
    return problem.place().words()
        + ": "
        + (what.isEmpty() ? "" : what + ", ")
        + problem.why()
        + limit(problem)
        + " ["
        + problem.code().key()
        + "] "
        + problem.remedy();
  }

  static void print(Problem problem, PrintWriter out) {
    out.println(heading(problem));
    out.println("    " + problem.why() + limit(problem));
    out.println("    do: " + problem.remedy());
    out.println("    meanwhile: " + problem.meanwhile().words());
    if (!problem.ask().isEmpty() && problem.severity() == Severity.ASK) {
      out.println("    answer as: " + problem.ask() + ", was \"" + problem.value() + "\"");
    }
  }

  private static String heading(Problem problem) {
    StringBuilder line = new StringBuilder();
    line.append(problem.severity().word().toUpperCase(Locale.ROOT));
    line.append("  ").append(problem.place().words());
    if (!problem.job().isEmpty() || !problem.part().isEmpty()) {
      line.append("  ").append(problem.job()).append(' ').append(problem.part());
    }
    if (!problem.field().isEmpty()) {
      line.append("  ").append(problem.field());
    }
    if (!problem.value().isEmpty()) {
      line.append(" \"").append(problem.value()).append('"');
    }
    if (problem.dueMin() != Problem.NO_DUE) {
      line.append("  (due ").append(CheckDesk.dueWords(problem.dueMin())).append(')');
    }
    return line.append("  [").append(problem.code().key()).append(']').toString();
  }

  static String limit(Problem problem) {
    return problem.limit().isEmpty() ? "" : " (right would be: " + problem.limit() + ")";
  }
}
