package spangle.plan.event;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * All that was reported of a week, in the order it was written.
 *
 * @param events in the order of the log
 */
public record EventLog(List<Event> events) {
  /** Nothing was reported. */
  public static final EventLog EMPTY = new EventLog(List.of());

  /** Copies the list. */
  public EventLog {
    events = List.copyOf(events);
  }

  /** What counts at that minute: struck events are gone, later ones too; in order of time. */
  public List<Event> until(int atMin) {
    Set<Integer> struck = new HashSet<>();
    events.stream()
        .filter(e -> e.kind() == EventKind.STRUCK)
        .forEach(e -> e.figures().event().ifPresent(struck::add));
    return events.stream()
        .filter(e -> e.atMin() <= atMin && e.kind() != EventKind.STRUCK)
        .filter(e -> !struck.contains(e.number()))
        .sorted(Comparator.comparingInt(Event::atMin).thenComparingInt(Event::number))
        .toList();
  }

  /** Number of the last event; 0 where there is none. */
  public int last() {
    return events.stream().mapToInt(Event::number).max().orElse(0);
  }

  /** Number of the last event before the first that happened later than that minute. */
  public int lastUntil(int atMin) {
    int last = 0;
    for (Event event : events) {
      if (event.atMin() > atMin) {
        break;
      }
      last = event.number();
    }
    return last;
  }
}
