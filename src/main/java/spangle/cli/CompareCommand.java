package spangle.cli;

import java.io.IOException;
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
import spangle.desk.PlanCompare;
import spangle.desk.PlanShelf;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.report.Change;

/** What moved between two plans. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = "What moved between two plans, in words.",
    footer = {"", "Example:", "  spangle compare monday/plan.json tuesday/plan.json"})
final class CompareCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan before.")
  @SuppressWarnings("NullAway.Init")
  private Path before;

  @Parameters(index = "1", paramLabel = "PLAN", description = "The plan after.")
  @SuppressWarnings("NullAway.Init")
  private Path after;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    PlanCompare.Difference difference = PlanCompare.of(read(before), read(after));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      List<JsonOut> changes = new ArrayList<>();
      for (Change c : difference.changes()) {
        changes.add(
            new JsonOut()
                .put("kind", c.kind())
                .put("lot", c.subject())
                .put("before", c.before())
                .put("after", c.after())
                .put("tell", c.tell()));
      }
      new JsonOut()
          .put("loads_moved", difference.loadsMoved())
          .put("minutes_moved", difference.minutesMoved())
          .put("changes", changes)
          .print(out);
      return ExitCode.DONE;
    }
    for (Change c : difference.changes()) {
      out.printf(
          Locale.ROOT,
          "%-8s %s: %s -> %s; tell %s%n",
          c.kind(),
          c.subject(),
          c.before(),
          c.after(),
          c.tell());
    }
    out.printf(
        Locale.ROOT,
        "%d changes; %d loads and %d minutes moved.%n",
        difference.changes().size(),
        difference.loadsMoved(),
        difference.minutesMoved());
    out.flush();
    return ExitCode.DONE;
  }

  private static PlanFile read(Path plan) {
    try {
      return PlanShelf.read(plan);
    } catch (PlanFileException notAPlan) {
      throw ExitException.refused(plan + ": " + notAPlan.getMessage());
    } catch (IOException unreadable) {
      throw ExitException.refused(plan + " cannot be read: " + unreadable.getMessage());
    }
  }
}
