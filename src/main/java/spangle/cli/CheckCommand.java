package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.CheckDesk;
import spangle.desk.CopyDesk;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Severity;

/** What is wrong or doubtful in the inputs of a week. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "What is wrong or doubtful in a week folder: every problem, worst first.",
    footer = {
      "",
      "Answers to questions go into answers.yaml in the week folder, for example:",
      "  answers:",
      "    - {ask: J-101/LB-20/thickness, was: \"16\", answer: 1.6 mm, by: design desk}",
      "",
      "Exit code: 0 nothing to do, 1 something waits for a person, 3 nothing can be planned.",
      "",
      "Example:",
      "  spangle check samples/harbour-week",
      "  spangle check samples/harbour-week --with samples/what-if/absent-sprayer.yaml",
      "  spangle check samples/dirty-week --copy clean-week"
    })
final class CheckCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "WEEK", description = "The week folder.")
  @SuppressWarnings("NullAway.Init")
  private Path week;

  @Option(
      names = "--with",
      paramLabel = "OVERLAY",
      description = "A what-if: the week as it would be with this overlay.")
  private @Nullable Path overlay;

  @Option(
      names = "--copy",
      paramLabel = "DIR",
      description = {
        "Also write a copy of the week with clean job files: the program's headings, house units,",
        "answers applied, refused rows apart with their reasons. The week itself is not touched;",
        "DIR must not be there yet."
      })
  private @Nullable Path copy;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    CheckDesk.Checked checked = CheckDesk.check(week, Optional.ofNullable(overlay));
    if (copy != null && !checked.stopped()) {
      write(copy);
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      asJson(checked).print(out);
    } else {
      asText(checked, out);
    }
    out.flush();
    if (checked.stopped()) {
      return ExitCode.REFUSED;
    }
    return checked.waits() ? ExitCode.WAITS : ExitCode.DONE;
  }

  private void write(Path folder) {
    try {
      List<String> files = CopyDesk.copy(week, folder);
      PrintWriter err = spec.commandLine().getErr();
      err.println("Copy: " + folder + ": " + String.join(", ", files));
      err.flush();
    } catch (FileAlreadyExistsException there) {
      throw ExitException.refused(folder + " is there already; give the name of a new folder.");
    } catch (IOException failed) {
      throw ExitException.refused("No copy was written: " + DiskWords.of(failed));
    }
  }

  private static JsonOut asJson(CheckDesk.Checked checked) {
    Map<String, Integer> counts = new TreeMap<>();
    List<JsonOut> problems = new ArrayList<>();
    for (Problem problem : checked.problems()) {
      counts.merge(problem.severity().word(), 1, Integer::sum);
      problems.add(ProblemOut.json(problem));
    }
    return new JsonOut()
        .put("week", checked.week())
        .put("stopped", checked.stopped())
        .put("rows_read", checked.rows().read())
        .put("rows_accepted", checked.rows().accepted())
        .put("rows_refused", checked.rows().refused())
        .put("counts", counts)
        .put("problems", problems);
  }

  private static void asText(CheckDesk.Checked checked, PrintWriter out) {
    checked.problems().forEach(problem -> ProblemOut.print(problem, out));
    out.println(summary(checked));
  }

  private static String summary(CheckDesk.Checked checked) {
    String rows =
        String.format(
            Locale.ROOT,
            "%d part rows read: %d taken, %d refused.",
            checked.rows().read(),
            checked.rows().accepted(),
            checked.rows().refused());
    if (checked.problems().isEmpty()) {
      return rows + " Nothing is wrong or doubtful.";
    }
    StringBuilder counts = new StringBuilder();
    for (Severity severity : Severity.values()) {
      long count = checked.problems().stream().filter(p -> p.severity() == severity).count();
      if (count > 0) {
        counts
            .append(counts.isEmpty() ? "" : ", ")
            .append(count)
            .append(' ')
            .append(severity.word());
      }
    }
    return rows + " Problems: " + counts + (checked.stopped() ? ". Nothing can be planned." : ".");
  }
}
