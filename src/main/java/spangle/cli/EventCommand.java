package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.EventBook;
import spangle.plan.event.EventField;

/** Writes down what has happened. */
@Command(
    name = "event",
    mixinStandardHelpOptions = true,
    description = {
      "Writes one event into events.yaml of a week folder; refuses one that cannot be.",
      "When it answers, the event is on the disk."
    },
    footer = {
      "",
      "What can happen, and what it wants:",
      "  arrived: job part count              expected: job part count until",
      "  released, withdrawn, hung, taken-down, started, done, inspected: load",
      "    (withdrawn: a sheet before anything hangs; taken-down: what hangs, before a station began)",
      "  as-planned: nothing (everything ran as planned up to then)",
      "  rejected: job part count [coats]     stripped: job part count",
      "  scrapped: job part count of (waiting, or rejected: what is beyond saving)",
      "  cancelled: job",
      "  broken: station [until] [count]      repaired: station   (count: places that are out)",
      "  slow: station factor (1 ends it)     absent: station factor until [from]",
      "  delivered: material amount           slipped: material until",
      "  certificate: job part si_pct p_pct   gate-opened: job part gate opened_by",
      "  priority-changed: job priority|due   level: station level_down_mm",
      "  struck: event (an earlier one was written by mistake)",
      "",
      "Example:",
      "  spangle event WEEK broken --when \"tue 09:20\" --who \"oven hand\" station=oven-1"
          + " until=\"tue 11:00\""
    })
final class EventCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "WEEK", description = "The week folder.")
  @SuppressWarnings("NullAway.Init")
  private Path week;

  @Parameters(index = "1", paramLabel = "WHAT", description = "What happened.")
  @SuppressWarnings("NullAway.Init")
  private String what;

  @Parameters(
      index = "2..*",
      paramLabel = "KEY=VALUE",
      description = "What it is about: load=P07, job=H-101, part=LB-20, count=40 ...")
  private List<String> about = new ArrayList<>();

  @Option(
      names = "--when",
      required = true,
      paramLabel = "TIME",
      description = "When: \"tue 09:20\" or a date with time.")
  @SuppressWarnings("NullAway.Init")
  private String when;

  @Option(names = "--who", paramLabel = "WHO", description = "Who says so.")
  private @Nullable String who;

  @Option(
      names = "--plan",
      paramLabel = "PLAN",
      description = "The plan people work by; WEEK/plan without it, where there is one.")
  private @Nullable Path plan;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("when", when);
    values.put("what", what);
    if (who != null) {
      values.put("who", who);
    }
    about.forEach(said -> put(said, values));
    EventBook.Answer answer = answer(values);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      new JsonOut()
          .put("number", answer.number())
          .put("event", answer.words())
          .put("refused", answer.refused())
          .print(out);
    } else if (answer.refused().isEmpty()) {
      out.printf(Locale.ROOT, "Event %d: %s%n", answer.number(), answer.words());
      out.flush();
    } else {
      PrintWriter err = spec.commandLine().getErr();
      err.println("The event was not written:");
      answer.refused().forEach(why -> err.println("  " + why));
      err.flush();
    }
    return answer.refused().isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
  }

  private void put(String said, Map<String, String> values) {
    int equals = said.indexOf('=');
    if (equals < 0) {
      throw new ParameterException(
          spec.commandLine(), "'" + said + "' is not KEY=VALUE; see spangle event --help");
    }
    String key = said.substring(0, equals);
    String name = key.toLowerCase(Locale.ROOT).replace('-', '_');
    if (!isField(name)) {
      throw new ParameterException(
          spec.commandLine(),
          name.equals("who") || name.equals("when")
              ? "write --" + name + " \"...\" in place of " + said
              : "an event has no '" + key + "'; see spangle event --help");
    }
    if (values.put(name, said.substring(equals + 1)) != null) {
      throw new ParameterException(
          spec.commandLine(), "'" + key + "' is given twice; one event has one: write two events");
    }
  }

  private static boolean isField(String name) {
    for (EventField field : EventField.values()) {
      if (field.key().equals(name)) {
        return true;
      }
    }
    return false;
  }

  private EventBook.Answer answer(Map<String, String> values) {
    Path worked = plan == null ? week.resolve("plan") : plan;
    boolean there = plan != null || Files.isRegularFile(worked.resolve("plan.json"));
    try {
      if (!Files.isDirectory(week)) {
        throw new IOException(week + " is no folder");
      }
      return EventBook.add(week, values, there ? Optional.of(worked) : Optional.empty());
    } catch (IOException refused) {
      throw ExitException.refused("The event was not written: " + DiskWords.of(refused));
    }
  }
}
