package spangle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spangle.intake.read.WeekReader;
import spangle.intake.week.WeekInput;
import spangle.plan.event.Event;
import spangle.plan.event.EventLog;

/** What has been reported, and a plan from the beginning of the week does not hear. */
public final class Unheard {
  private Unheard() {}

  /**
   * Refuses to plan from the beginning over the plan people work by, once something has happened.
   *
   * @param week the week folder
   * @param out where the new plan would lie
   * @throws IOException in words what stands against it and what to run instead
   */
  public static void refuseOver(Path week, Path out) throws IOException {
    if (!Files.isRegularFile(out.resolve("plan.json"))
        || !Files.isRegularFile(week.resolve(EventBook.FILE))) {
      return;
    }
    List<Event> events = heard(WeekReader.read(week).input());
    if (!events.isEmpty()) {
      throw new IOException(
          told(events)
              + "; a plan from the beginning does not know of it and would move what hangs. Run:"
              + " spangle replan "
              + week
              + " --at \""
              + last(events)
              + "\" or later. To see the week without its events plan it into another folder with"
              + " --out; to begin it anew take "
              + EventBook.FILE
              + " away");
    }
  }

  /** What a plan from the beginning does not know, in one sentence; empty where nothing. */
  public static Optional<String> by(WeekInput input) {
    List<Event> events = heard(Optional.of(input));
    return events.isEmpty()
        ? Optional.empty()
        : Optional.of(
            told(events)
                + "; this plan is of the week from its beginning and does not know of it: replan"
                + " does");
  }

  private static List<Event> heard(Optional<WeekInput> input) {
    return input.map(WeekInput::events).orElse(EventLog.EMPTY).until(Integer.MAX_VALUE);
  }

  private static String told(List<Event> events) {
    Event last = events.get(events.size() - 1);
    return EventBook.FILE
        + " tells of "
        + events.size()
        + (events.size() == 1 ? " event, " : " events, the last ")
        + DayWords.of(last.atMin())
        + " "
        + last.words();
  }

  private static String last(List<Event> events) {
    return DayWords.of(events.get(events.size() - 1).atMin());
  }
}
