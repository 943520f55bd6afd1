package spangle.desk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Severity;
import spangle.intake.read.WeekReader;
import spangle.intake.week.WeekInput;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;
import spangle.plan.event.EventLog;
import spangle.plan.event.WeekState;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;

/**
 * Writes events into a week's log. The longer log is written and forced to disk beside the old one
 * and then renamed over it: whoever is killed in between leaves the old log, and an event that was
 * acknowledged is on the disk.
 */
public final class EventBook {
  static final String FILE = "events.yaml";
  private static final String NEXT = "events.yaml~new";
  private static final String LOCK = ".events.lock";

  private EventBook() {}

  /**
   * What became of an event.
   *
   * @param number its place in the log; 0 when it was refused
   * @param words the event in words
   * @param refused why it was refused; empty when it was written
   */
  public record Answer(int number, String words, List<String> refused) {
    /** Copies the list. */
    public Answer {
      refused = List.copyOf(refused);
    }
  }

  /**
   * Adds one event, unless it cannot be.
   *
   * @param week the week folder
   * @param values what was said, by key, in the order in which it is written
   * @param plan the plan people work by, to hold loads against; empty where there is none yet
   * @throws IOException when the disk refuses; the log is then as it was
   */
  public static synchronized Answer add(Path week, Map<String, String> values, Optional<Path> plan)
      throws IOException {
    Path log = week.resolve(FILE);
    Path next = week.resolve(NEXT);
    try (FileChannel channel =
        FileChannel.open(week.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.lock();
      String before = Files.exists(log) ? Files.readString(log, StandardCharsets.UTF_8) : "";
      Files.writeString(next, longer(before, values), StandardCharsets.UTF_8);
      try {
        Answer answer = judge(week, plan);
        if (answer.refused().isEmpty()) {
          FolderTree.force(next);
          Files.move(next, log, StandardCopyOption.ATOMIC_MOVE);
          FolderTree.force(week);
        }
        return answer;
      } finally {
        Files.deleteIfExists(next);
      }
    }
  }

  private static String longer(String before, Map<String, String> values) {
    StringBuilder text = new StringBuilder(before);
    if (before.isBlank()) {
      text.append("events:");
    }
    if (text.charAt(text.length() - 1) != '\n') {
      text.append('\n');
    }
    List<String> pairs = new ArrayList<>();
    values.forEach((key, value) -> pairs.add(key + ": " + quoted(value)));
    return text.append("  - {").append(String.join(", ", pairs)).append("}\n").toString();
  }

  /** A YAML text in double quotes, on one line. */
  private static String quoted(String value) {
    StringBuilder text = new StringBuilder("\"");
    value
        .codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                text.append('\\').appendCodePoint(c);
              } else if (c < 0x20 || c == 0x7f || (c >= 0x80 && c < 0xa0) || c == 0xfeff) {
                text.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                text.appendCodePoint(c);
              }
            });
    return text.append('"').toString();
  }

  private static Answer judge(Path week, Optional<Path> plan) throws IOException {
    WeekReader.Reading now = WeekReader.read(week);
    WeekReader.Reading reading = WeekReader.readWithEvents(week, NEXT);
    if (reading.input().isEmpty()) {
      return new Answer(0, "", words(reading.problems(), Severity.STOP));
    }
    WeekInput input = reading.input().get();
    int last = now.input().map(WeekInput::events).orElse(EventLog.EMPTY).last();
    List<Problem> own =
        reading.problems().stream()
            .filter(p -> p.place().file().equals(NEXT))
            .filter(p -> now.problems().stream().noneMatch(o -> sameBut(o, p)))
            .toList();
    int number = input.events().last();
    if (number <= last || !own.isEmpty()) {
      List<String> why = words(own, Severity.WARN);
      return new Answer(
          0, "", why.isEmpty() ? List.of(FILE + " does not end with its list of events") : why);
    }
    Event event = input.events().events().get(input.events().events().size() - 1);
    Optional<String> against = against(plan, input, event);
    return against.isPresent()
        ? new Answer(0, event.words(), List.of(against.get()))
        : new Answer(number, event.words(), List.of());
  }

  private static boolean sameBut(Problem before, Problem now) {
    return before.place().file().equals(FILE)
        && before.place().line() == now.place().line()
        && before.place().column() == now.place().column()
        && before.code() == now.code();
  }

  private static List<String> words(List<Problem> problems, Severity atLeast) {
    return problems.stream()
        .filter(p -> p.severity().compareTo(atLeast) <= 0)
        .map(EventBook::sentence)
        .toList();
  }

  /** Key and value first: the line of the log is not there for the person to look at. */
  private static String sentence(Problem p) {
    String key =
        p.field().isEmpty()
            ? ""
            : p.field() + (p.value().isEmpty() ? "" : " '" + p.value() + "'") + ": ";
    String limit = p.limit().isEmpty() ? "" : " (" + p.limit() + ")";
    return key + p.why() + limit + "; " + p.remedy();
  }

  private static List<WeekState.Refusal> refused(
      PlanFile file, EventLog log, EventLog all, int atMin) {
    return WeekState.of(file.brief(), file.plan(), log, Heard.known(file, all), atMin).refused();
  }

  /** An earlier report that counted until now and would not beside this one. */
  private static Optional<String> overturns(
      PlanFile file, EventLog log, Event event, List<WeekState.Refusal> now) {
    EventLog without =
        new EventLog(log.events().stream().filter(e -> e.number() != event.number()).toList());
    Set<Integer> before = new HashSet<>();
    refused(file, without, log, event.atMin()).forEach(r -> before.add(r.event().number()));
    return now.stream()
        .filter(r -> !before.contains(r.event().number()))
        .findFirst()
        .map(
            r ->
                "it does not go together with event "
                    + r.event().number()
                    + ", "
                    + r.event().words()
                    + ": "
                    + r.why()
                    + "; replan first, or strike that one where it is wrong");
  }

  /** What the plan people work by has against it. */
  private static Optional<String> against(Optional<Path> plan, WeekInput input, Event event)
      throws IOException {
    if (plan.isEmpty()) {
      return Optional.empty();
    }
    try {
      PlanFile file = PlanShelf.read(plan.get());
      List<WeekState.Refusal> now = refused(file, input.events(), input.events(), event.atMin());
      Optional<String> own =
          now.stream()
              .filter(r -> r.event().number() == event.number())
              .map(WeekState.Refusal::why)
              .findFirst();
      return own.isPresent() || event.kind() == EventKind.STRUCK
          ? own
          : overturns(file, input.events(), event, now);
    } catch (PlanFileException notAPlan) {
      throw new IOException(plan.get() + ": " + notAPlan.getMessage(), notAPlan);
    }
  }
}
