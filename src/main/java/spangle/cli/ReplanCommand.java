package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.PlanDesk;
import spangle.desk.PlanHistory;
import spangle.desk.ReplanDesk;
import spangle.intake.read.Moment;
import spangle.solve.SolveOptions;

/** The rest of the week again, with little moved. */
@Command(
    name = "replan",
    mixinStandardHelpOptions = true,
    description = {
      "Plans the rest of a week again after what events.yaml says has happened.",
      "What hangs stays; the rest of today moves little; prints the change list."
    },
    footer = {
      "",
      "Example:",
      "  spangle replan samples/harbour-week --keep samples/harbour-week/plan --at \"tue 09:20\""
    })
final class ReplanCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "WEEK", description = "The week folder.")
  @SuppressWarnings("NullAway.Init")
  private Path week;

  @Option(
      names = "--keep",
      paramLabel = "PLAN",
      description = "The plan people work by, plan.json or its folder; WEEK/plan without it.")
  private @Nullable Path keep;

  @Option(
      names = "--at",
      required = true,
      paramLabel = "TIME",
      description = "From when something may change: \"tue 09:20\" or a date with time.")
  @SuppressWarnings("NullAway.Init")
  private String at;

  @Option(
      names = "--freeze",
      paramLabel = "TIME",
      description = {
        "What begins before stays where nothing stands against it.",
        "Without it the rest of the half-shift; \"none\" for nothing but what hangs or is released."
      })
  private @Nullable String freeze;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the sheets go; the folder of the kept plan without it.")
  private @Nullable Path out;

  @Mixin private SearchOptions search = new SearchOptions(10, 1);

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    SolveOptions options = search.read(spec);
    PlanHistory shelf = shelf();
    int atMin = minute(shelf, "--at", at);
    ReplanDesk.tooEarly(shelf.current(), atMin)
        .ifPresent(
            why -> {
              throw ExitException.refused("Nothing was planned: --at " + why + ".");
            });
    int freezeUntil = atMin;
    if (freeze == null) {
      freezeUntil = ReplanDesk.halfShiftEnd(shelf.current(), atMin);
    } else if (!freeze.equals("none")) {
      freezeUntil = minute(shelf, "--freeze", freeze);
    }
    ReplanDesk.Wish wish = new ReplanDesk.Wish(week, shelf, atMin, freezeUntil);
    Path target = out == null ? shelf.folder() : out;
    try {
      PlanDesk.requireOwnFolder(week, target);
    } catch (IOException refused) {
      throw ExitException.refused("Nothing was planned: " + DiskWords.of(refused));
    }
    ReplanDesk desk = new ReplanDesk();
    ReplanDesk.Outcome outcome = desk.replan(wish, options, progress -> {});
    if (!outcome.refusal().isEmpty()) {
      throw ExitException.refused("Nothing was planned: " + outcome.refusal() + ".");
    }
    if (outcome.made().isEmpty()) {
      return ProblemOut.refuse("Nothing was planned", outcome.problems(), json, spec.commandLine());
    }
    ReplanDesk.Replan replan = outcome.made().get();
    List<String> files = new ArrayList<>();
    try {
      files.addAll(ReplanDesk.write(wish, target, replan));
    } catch (IOException refused) {
      throw ExitException.refused("Nothing was written: " + DiskWords.of(refused));
    }
    PrintWriter stdout = spec.commandLine().getOut();
    if (json) {
      ReplanWords.json(replan, target, files).print(stdout);
    } else {
      stdout.print(
          ReplanWords.screen(replan, shelf.current().version(), outcome.problems(), target));
      stdout.flush();
    }
    return replan.waits() ? ExitCode.WAITS : ExitCode.DONE;
  }

  private PlanHistory shelf() {
    Path plan = keep == null ? week.resolve("plan") : keep;
    return PlanReading.of(plan, () -> PlanHistory.open(plan));
  }

  private int minute(PlanHistory shelf, String option, String words) {
    OptionalInt minute = Moment.of(shelf.current().brief().monday(), words);
    int horizon = shelf.current().brief().horizonMin();
    if (minute.isEmpty() || minute.getAsInt() < 0 || minute.getAsInt() >= horizon) {
      throw new ParameterException(
          spec.commandLine(),
          option
              + " '"
              + words
              + "' is no time of this week; write it like \"tue 09:20\" or "
              + shelf.current().brief().monday()
              + " 09:20");
    }
    return minute.getAsInt();
  }
}
