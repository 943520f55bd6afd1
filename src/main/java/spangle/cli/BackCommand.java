package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.BackDesk;
import spangle.desk.PlanHistory;
import spangle.plan.json.PlanFileException;
import spangle.plan.json.Replanned;

/** Back to an earlier plan. */
@Command(
    name = "back",
    mixinStandardHelpOptions = true,
    description = {
      "Goes back to the plan before, with all its sheets; the one left behind stays too.",
      "Refused when loads of the newer plan are on the floor."
    },
    footer = {"", "Example:", "  spangle back samples/harbour-week --to A"})
final class BackCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "WEEK", description = "The week folder.")
  @SuppressWarnings("NullAway.Init")
  private Path week;

  @Option(
      names = "--plan",
      paramLabel = "PLAN",
      description = "The plan people work by; WEEK/plan without it.")
  private @Nullable Path plan;

  @Option(
      names = "--to",
      paramLabel = "LETTER",
      description = "Version to go back to; without it the one the plan was made from.")
  private @Nullable String to;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    Path worked = plan == null ? week.resolve("plan") : plan;
    PlanHistory history = PlanReading.of(worked, () -> PlanHistory.open(worked));
    try {
      String letter =
          to != null ? to : history.current().replanned().map(Replanned::keptVersion).orElse("");
      List<String> against = BackDesk.back(week, history, letter);
      say(history.current().version(), letter, against);
      return against.isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
    } catch (PlanFileException notAPlan) {
      throw ExitException.refused(worked + ": " + notAPlan.getMessage());
    } catch (IOException refused) {
      throw ExitException.refused("Nothing was changed: " + DiskWords.of(refused));
    }
  }

  private void say(String from, String letter, List<String> against) {
    if (json) {
      new JsonOut()
          .put("version", against.isEmpty() ? letter : from)
          .put("left", against.isEmpty() ? from : "")
          .put("refused", against)
          .print(spec.commandLine().getOut());
    } else if (against.isEmpty()) {
      PrintWriter out = spec.commandLine().getOut();
      out.printf(
          Locale.ROOT, "Version %s is valid again; version %s stays beside it.%n", letter, from);
      out.flush();
    } else {
      PrintWriter err = spec.commandLine().getErr();
      err.println("Nothing was changed:");
      against.forEach(why -> err.println("  " + why));
      err.flush();
    }
  }
}
