package spangle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.CheckDesk;
import spangle.intake.problem.Problem;
import spangle.plan.Held;

/** What is wrong or doubtful in the inputs. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Every problem of a week's inputs: where, what, why, what to do.",
    footer = {"", "Example:", "  spangle check samples/harbour-week"})
final class CheckCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "WEEK", description = "The week folder.")
  @SuppressWarnings("NullAway.Init")
  private Path week;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    CheckDesk.Checked checked = CheckDesk.check(week);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      json(checked).print(out);
    } else {
      words(checked, out);
    }
    if (checked.stopped()) {
      return ExitCode.REFUSED;
    }
    return checked.clean() ? ExitCode.DONE : ExitCode.WAITS;
  }

  private static void words(CheckDesk.Checked checked, PrintWriter out) {
    for (Problem p : checked.problems()) {
      out.printf(Locale.ROOT, "%s  %s [%s]%n", p.place().words(), p.why(), p.code().key());
      if (!p.value().isEmpty()) {
        out.printf(Locale.ROOT, "    value: %s%s%n", p.value(), limit(p));
      }
      out.printf(Locale.ROOT, "    do: %s. Meanwhile %s.%n", p.remedy(), p.meanwhile().words());
    }
    for (Held h : checked.held()) {
      out.printf(
          Locale.ROOT,
          "%s/%s  gate shut: %s [%s]%n    opens with: %s; answers: %s%n",
          h.jobId(),
          h.partId(),
          h.words(),
          h.gate(),
          h.opens(),
          h.whoAnswers());
    }
    out.printf(
        Locale.ROOT,
        "%d rows read, %d accepted, %d refused; %d problems, %d parts held by a gate.%n",
        checked.rows().read(),
        checked.rows().accepted(),
        checked.rows().refused(),
        checked.problems().size(),
        checked.held().size());
    out.flush();
  }

  private static String limit(Problem p) {
    return p.limit().isEmpty() ? "" : "; right would be " + p.limit();
  }

  private static JsonOut json(CheckDesk.Checked checked) {
    List<JsonOut> problems = new ArrayList<>();
    for (Problem p : checked.problems()) {
      problems.add(
          new JsonOut()
              .put("code", p.code().key())
              .put("severity", p.severity().word())
              .put("file", p.place().file())
              .put("line", p.place().line())
              .put("column", p.place().column())
              .put("cell", p.place().cell())
              .put("field", p.field())
              .put("value", p.value())
              .put("limit", p.limit())
              .put("why", p.why())
              .put("remedy", p.remedy())
              .put("meanwhile", p.meanwhile().words())
              .put("ask", p.ask())
              .put("job", p.job())
              .put("part", p.part()));
    }
    List<JsonOut> held = new ArrayList<>();
    for (Held h : checked.held()) {
      held.add(
          new JsonOut()
              .put("job", h.jobId())
              .put("part", h.partId())
              .put("gate", h.gate())
              .put("pieces", h.pieces())
              .put("why", h.words())
              .put("opens", h.opens())
              .put("who_answers", h.whoAnswers()));
    }
    return new JsonOut()
        .put("rows_read", checked.rows().read())
        .put("rows_accepted", checked.rows().accepted())
        .put("rows_refused", checked.rows().refused())
        .put("problems", problems)
        .put("held", held);
  }
}
