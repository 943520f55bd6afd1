package spangle.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.PlanDesk;
import spangle.desk.Promise;
import spangle.desk.PromiseDesk;
import spangle.plan.Held;
import spangle.solve.Freedom;

/** When a new job can be had, and what it costs the others. */
@Command(
    name = "promise",
    mixinStandardHelpOptions = true,
    description = "The earliest honest date for a new job, and who would slip for a sooner one.",
    footer = {
      "",
      "The job file is one that is not in the week folder yet: .csv, .xlsx, .json or .yaml.",
      "Exit code: 0 a date in time, nobody late for it; 1 later than wanted, a gate shut, no date.",
      "",
      "Example:",
      "  spangle promise samples/harbour-week --job samples/new-jobs/railing-bracket.yaml",
      "  spangle promise samples/harbour-week --job samples/new-jobs/railing-bracket.yaml"
          + " --at \"tue 10:00\""
    })
final class PromiseCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "WEEK", description = "The week folder.")
  @SuppressWarnings("NullAway.Init")
  private Path week;

  @Option(names = "--job", paramLabel = "FILE", required = true, description = "The new job.")
  @SuppressWarnings("NullAway.Init")
  private Path job;

  @Option(
      names = "--keep",
      paramLabel = "PLAN",
      description = "The announced plan; without it the one in WEEK/plan.")
  private @Nullable Path keep;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "Now: nothing new starts before it, such as \"wed 10:00\". Default: Monday.")
  private @Nullable String at;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    if (!Files.isRegularFile(job)) {
      throw ExitException.refused(job + " is not there, or is no file");
    }
    PromiseDesk.Answer answer = answer();
    PrintWriter out = spec.commandLine().getOut();
    if (answer.promise().isEmpty()) {
      return ProblemOut.refuse(answer.nothing(), answer.refused(), json, spec.commandLine());
    }
    Promise promise = answer.promise().get();
    if (json) {
      asJson(promise).print(out);
    } else {
      words(promise, out);
      out.flush();
    }
    return promise.kept() ? ExitCode.DONE : ExitCode.WAITS;
  }

  private PromiseDesk.Answer answer() {
    int atMin = 0;
    if (at != null) {
      OptionalInt minute = PlanDesk.minute(week, at);
      if (minute.isEmpty()) {
        throw new ParameterException(
            spec.commandLine(),
            "--at: '" + at + "' is no time of the week; write it like wed 10:00");
      }
      atMin = minute.getAsInt();
    }
    int now = atMin;
    return PlanReading.of(
        keep == null ? week : keep,
        () -> PromiseDesk.promise(week, job, Optional.ofNullable(keep), now));
  }

  private static void words(Promise promise, PrintWriter out) {
    promise.work().forEach(out::println);
    boolean first = true;
    for (Promise.Offer offer : promise.offers()) {
      String late =
          offer.endMin() > promise.dueMin()
              ? " - later than wanted (" + promise.dueWords() + ")"
              : " - wanted " + promise.dueWords();
      out.println();
      out.println((first ? "" : "or ") + offer.when() + late);
      first = false;
      out.println("  " + cost(offer));
      offer.conditions().forEach(c -> out.println("  " + c));
      offer.slips().forEach(s -> out.println("  slips: " + s));
      offer.kits().forEach(k -> out.println("  kit: " + k));
      offer.where().forEach(w -> out.println("  " + w));
      offer.findings().forEach(f -> out.println("  the audit objects: " + f.words()));
    }
    promise.lacking().forEach(l -> out.println("No date: " + l));
    for (Held held : promise.held()) {
      out.printf(
          Locale.ROOT,
          "No date for %s: %s. Opens with: %s. %s must answer. No due date opens a gate.%n",
          held.name(),
          held.words(),
          held.opens(),
          held.whoAnswers());
    }
    promise.problems().forEach(p -> out.println("note: " + p.place().words() + ": " + p.why()));
    promise.notes().forEach(n -> out.println("note: " + n));
  }

  private static String cost(Promise.Offer offer) {
    String moved = offer.loadsMoved() + (offer.loadsMoved() == 1 ? " load moves" : " loads move");
    return switch (offer.freedom()) {
      case NOTHING_MOVES -> "every announced load stays where it is";
      case DATES_KEPT ->
          offer.loadsMoved() == 0
              ? "every announced load stays where it is"
              : moved + ", every announced date is kept";
      case DATES_MAY_SLIP -> moved + (offer.slips().isEmpty() ? "" : ", these slip:");
    };
  }

  private static JsonOut asJson(Promise promise) {
    List<JsonOut> offers = new ArrayList<>();
    for (Promise.Offer o : promise.offers()) {
      offers.add(
          new JsonOut()
              .put("keeps", keeps(o.freedom()))
              .put("end_min", o.endMin())
              .put("when", o.when())
              .put("in_time", o.endMin() <= promise.dueMin())
              .put("loads_moved", o.loadsMoved())
              .put("slips", o.slips())
              .put("kits", o.kits())
              .put("conditions", o.conditions())
              .put("where", o.where())
              .put("findings", o.findings().stream().map(f -> f.words()).toList()));
    }
    List<JsonOut> held = new ArrayList<>();
    for (Held h : promise.held()) {
      held.add(
          new JsonOut()
              .put("job", h.jobId())
              .put("part", h.partId())
              .put("gate", h.gate())
              .put("why", h.words())
              .put("opens_with", h.opens())
              .put("who", h.whoAnswers()));
    }
    return new JsonOut()
        .put("jobs", promise.jobs())
        .put("work", promise.work())
        .put("due_min", promise.dueMin())
        .put("kept", promise.kept())
        .put("offers", offers)
        .put("held", held)
        .put("lacking", promise.lacking())
        .put("problems", promise.problems().stream().map(p -> p.why()).toList())
        .put("notes", promise.notes());
  }

  private static String keeps(Freedom freedom) {
    return freedom.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
