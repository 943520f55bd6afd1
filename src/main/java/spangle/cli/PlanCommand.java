package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import spangle.desk.Unheard;
import spangle.desk.WhatIfStart;
import spangle.solve.SolveOptions;

/** The batch schedule of a week and all its sheets. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = {
      "Plans a week folder: rack loads, oven batches, dips, and what to buy.",
      "Once events are written down, replan takes its place.",
      "It also says what no plan of the same lots can go under, and what the usual rule of a shop"
          + " (due date, then colour, each rack filled in turn) makes of the week."
    },
    footer = {
      "",
      "Ctrl-C ends the search and writes the best plan so far.",
      "",
      "Examples:",
      "  spangle plan samples/harbour-week --seconds 10",
      "  spangle plan samples/harbour-week --with samples/what-if/saturday-shift.yaml"
    })
final class PlanCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "WEEK", description = "The week folder.")
  @SuppressWarnings("NullAway.Init")
  private Path week;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the sheets go; WEEK/plan without it, beside the overlay for a what-if.")
  private @Nullable Path out;

  @Option(
      names = "--with",
      paramLabel = "OVERLAY",
      description = "A what-if: a small file of what is different. The week folder is not touched.")
  private @Nullable Path overlay;

  @Option(
      names = "--from",
      paramLabel = "PLAN",
      description =
          "For a what-if: the plan from which its search starts; WEEK/plan without it, so that the"
              + " two plans differ by the overlay and not by chance.")
  private @Nullable Path from;

  @Mixin private SearchOptions search = new SearchOptions(30, 2);

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    SolveOptions options = search.read(spec);
    PrintWriter err = spec.commandLine().getErr();
    ProgressLine progress = new ProgressLine(err, terminal());
    PlanDesk desk = new PlanDesk();
    return new StopSwitch(desk::stop, err).guard(() -> run(desk, options, progress, err));
  }

  /** On JDK 17 there is no console where output is sent to a file or another program. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean terminal() {
    return System.console() != null;
  }

  private int run(PlanDesk desk, SolveOptions options, ProgressLine progress, PrintWriter err) {
    Path target = target();
    refuseIfNotWritable(() -> PlanDesk.requireOwnFolder(week, target));
    if (overlay == null) {
      refuseIfNotWritable(() -> Unheard.refuseOver(week, target));
    }
    WhatIfStart start = start();
    PlanDesk.Outcome outcome =
        desk.plan(week, Optional.ofNullable(overlay), start, options, progress::show);
    progress.end();
    if (outcome.made().isEmpty()) {
      return ProblemOut.refuse("Nothing was planned", outcome.problems(), json, spec.commandLine());
    }
    PlanDesk.Made made = outcome.made().get();
    Unheard.by(made.week().input()).ifPresent(err::println);
    err.flush();
    List<String> files = new ArrayList<>();
    refuseIfNotWritable(
        () -> files.addAll(PlanDesk.write(week, Optional.ofNullable(overlay), target, made)));
    PrintWriter stdout = spec.commandLine().getOut();
    if (json) {
      PlanWords.json(made, target, files).print(stdout);
    } else {
      if (overlay != null) {
        stdout.println("What if: " + start.words(made));
      }
      stdout.print(PlanWords.screen(made, target, files));
      stdout.flush();
    }
    return made.waits() ? ExitCode.WAITS : ExitCode.DONE;
  }

  private WhatIfStart start() {
    if (overlay == null) {
      if (from != null) {
        throw new ParameterException(
            spec.commandLine(), "--from goes with --with: only a what-if starts from another plan");
      }
      return WhatIfStart.ANEW;
    }
    Optional<Path> named = Optional.ofNullable(from);
    return PlanReading.of(from == null ? week : from, () -> WhatIfStart.of(week, named));
  }

  private Path target() {
    if (out != null) {
      return out;
    }
    return overlay == null ? week.resolve("plan") : PlanDesk.besideOverlay(overlay);
  }

  private interface Writing {
    void write() throws IOException;
  }

  private static void refuseIfNotWritable(Writing writing) {
    try {
      writing.write();
    } catch (IOException refused) {
      throw ExitException.refused("Nothing was written: " + DiskWords.of(refused));
    }
  }
}
