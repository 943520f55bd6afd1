package spangle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.PlanShelf;
import spangle.desk.Why;
import spangle.desk.WhyDesk;
import spangle.plan.json.PlanFile;

/** Why a job is where it is, and what holds it. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    description = "Why a job is where it is in a plan, and what holds it there.",
    footer = {
      "",
      "Its last pieces, or all that are left out, are put anew with one thing at a time out of the",
      "way; everybody else's dates are kept, and what is won is counted from the plan.",
      "Exit code: 0 in time, 1 late, not in the plan, or behind a gate.",
      "",
      "Example:",
      "  spangle why samples/harbour-week/plan H-118"
    })
final class WhyCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "PLAN", description = "plan.json or its folder.")
  @SuppressWarnings("NullAway.Init")
  private Path plan;

  @Parameters(index = "1", paramLabel = "JOB", description = "A job, or job/part.")
  @SuppressWarnings("NullAway.Init")
  private String job;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    PlanFile file = PlanReading.of(plan, () -> PlanShelf.sound(plan));
    List<Why> whys = WhyDesk.why(file, job);
    if (whys.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "the plan has no job '" + job + "'; it has " + String.join(", ", WhyDesk.jobs(file)));
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      new JsonOut()
          .put("job", job)
          .put("parts", whys.stream().map(WhyCommand::asJson).toList())
          .print(out);
    } else {
      whys.forEach(why -> words(why, out));
      out.flush();
    }
    return whys.stream().anyMatch(Why::late) ? ExitCode.WAITS : ExitCode.DONE;
  }

  private static void words(Why why, PrintWriter out) {
    out.println(why.name() + ": " + why.place());
    why.room().ifPresent(r -> out.println("  there is room for it sooner: " + r.words()));
    if (!why.holds().isEmpty()) {
      out.println(why.room().isPresent() ? "  sooner than that it is held by" : "  held by");
      why.holds().forEach(h -> out.println("  - " + h.words()));
    } else if (!why.lets().isEmpty()) {
      out.println("  " + nothing(why));
    }
    why.notes().forEach(n -> out.println("  note: " + n));
    if (!why.lets().isEmpty()) {
      out.println("  not by: " + String.join(", ", why.lets()));
    }
  }

  private static String nothing(Why why) {
    return why.room().isPresent()
        ? "sooner than that no single thing holds it"
        : "no single thing holds it: with any one of them away it would not be done sooner";
  }

  private static JsonOut asJson(Why why) {
    List<JsonOut> holds = new ArrayList<>();
    for (Why.Hold h : why.holds()) {
      holds.add(
          new JsonOut()
              .put("what", h.what())
              .put("words", h.words())
              .put("end_min", number(h.endMin()))
              .put("sooner_min", number(h.soonerMin())));
    }
    return new JsonOut()
        .put("job", why.jobId())
        .put("part", why.partId())
        .put("place", why.place())
        .put("end_min", number(why.endMin()))
        .put("due_min", why.dueMin())
        .put("late", why.late())
        .put("room", why.room().map(WhyCommand::asJson).orElse(null))
        .put("held_by", holds)
        .put("not_by", why.lets())
        .put("notes", why.notes());
  }

  private static JsonOut asJson(Why.Room room) {
    return new JsonOut()
        .put("end_min", room.endMin())
        .put("words", room.words())
        .put("costs", room.costs());
  }

  private static @Nullable Integer number(OptionalInt minute) {
    return minute.isPresent() ? minute.getAsInt() : null;
  }
}
