package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.PlanDesk;
import spangle.desk.Unheard;
import spangle.intake.problem.Problem;
import spangle.solve.Progress;
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
      names = "--seconds",
      paramLabel = "N",
      description = "Longest search; it ends sooner when nothing gets better. Default: 30.")
  private double seconds = 30;

  @Option(
      names = "--steps",
      paramLabel = "N",
      description =
          "Moves to try on each thread instead of seconds: the same seed gives the same bytes.")
  private long steps;

  @Option(names = "--seed", paramLabel = "N", description = "Random seed. Default: 1.")
  private long seed = 1;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Searches side by side that compare notes; the best plan counts. Default: 2.")
  private int threads = 2;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    if (!(seconds > 0 && seconds <= 86_400) || steps < 0 || threads < 1 || threads > 64) {
      throw new ParameterException(
          spec.commandLine(),
          "--seconds lies above 0 and up to 86400, --steps at 0 or above, --threads from 1 to 64");
    }
    PrintWriter err = spec.commandLine().getErr();
    ProgressLine progress = new ProgressLine(err, terminal());
    PlanDesk desk = new PlanDesk();
    return new StopSwitch(desk::stop, err).guard(() -> run(desk, progress, err));
  }

  /** On JDK 17 there is no console where output is sent to a file or another program. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean terminal() {
    return System.console() != null;
  }

  private int run(PlanDesk desk, ProgressLine progress, PrintWriter err) {
    Path target = target();
    refuseIfNotWritable(() -> PlanDesk.requireOwnFolder(week, target));
    if (overlay == null) {
      refuseIfNotWritable(() -> Unheard.refuseOver(week, target));
    }
    PlanDesk.Outcome outcome =
        desk.plan(
            week,
            Optional.ofNullable(overlay),
            new SolveOptions(seconds, steps, seed, threads),
            progress::show);
    progress.end();
    if (outcome.made().isEmpty()) {
      complain(outcome.problems(), err);
      return ExitCode.REFUSED;
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
      stdout.print(PlanWords.screen(made, target, files));
      stdout.flush();
    }
    return made.waits() ? ExitCode.WAITS : ExitCode.DONE;
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
      throw ExitException.refused("Nothing was written: " + refused.getMessage());
    }
  }

  private static void complain(List<Problem> problems, PrintWriter err) {
    err.println("Nothing was planned:");
    for (Problem problem : problems) {
      err.printf(
          Locale.ROOT,
          "  %s: %s [%s] %s%n",
          problem.place().words(),
          problem.why(),
          problem.code().key(),
          problem.remedy());
    }
    err.flush();
  }

  /** The progress line: one line rewritten on a terminal, a line for each tenth step elsewhere. */
  static final class ProgressLine {
    private final PrintWriter err;
    private final boolean terminal;
    private double lastShown = -1;

    ProgressLine(PrintWriter err, boolean terminal) {
      this.err = err;
      this.terminal = terminal;
    }

    void show(Progress p) {
      boolean due = lastShown < 0 || p.seconds() - lastShown >= (terminal ? 0.2 : 2);
      if (!due) {
        return;
      }
      lastShown = p.seconds();
      String line =
          String.format(
              Locale.ROOT,
              "%5.1f s  %d batches, %d late, %d left out, cost %d, %d improvements",
              p.seconds(),
              p.batches(),
              p.lateLots(),
              p.leftOut(),
              p.goal(),
              p.improvements());
      err.print(terminal ? "\r" + line + "   " : line + System.lineSeparator());
      err.flush();
    }

    void end() {
      if (terminal && lastShown >= 0) {
        err.println();
        err.flush();
      }
    }
  }
}
