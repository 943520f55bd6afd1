package spangle.plan.event;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Writes event logs for tests, a few words at a time. */
public final class Said {
  private final List<Event> events = new ArrayList<>();

  /** Of a load. */
  public Said load(int atMin, EventKind kind, String load) {
    return add(atMin, kind, load, "", "", "", Event.Figures.NONE);
  }

  /** Of a station. */
  public Said station(int atMin, EventKind kind, String station) {
    return add(atMin, kind, "", "", "", station, Event.Figures.NONE);
  }

  /** A breakdown with an end. */
  public Said broken(int atMin, String station, int untilMin) {
    Event.Figures n = Event.Figures.NONE;
    return add(
        atMin,
        EventKind.BROKEN,
        "",
        "",
        "",
        station,
        new Event.Figures(
            n.count(),
            n.amount(),
            n.fromMin(),
            OptionalInt.of(untilMin),
            n.factor(),
            n.siPct(),
            n.pPct(),
            n.levelDownMm(),
            n.priority(),
            n.dueMin(),
            n.event(),
            n.coats()));
  }

  /** So many places of a station are out of use. */
  public Said placesOut(int atMin, String station, int count) {
    return add(atMin, EventKind.BROKEN, "", "", "", station, figures(count, 0));
  }

  /** Pieces that did not pass. */
  public Said rejected(int atMin, String job, String part, int count) {
    return add(atMin, EventKind.REJECTED, "", job, part, "", figures(count, 0));
  }

  /** Pieces with so many coats that did not pass. */
  public Said rejected(int atMin, String job, String part, int count, int coats) {
    Event.Figures n = figures(count, 0);
    return add(
        atMin,
        EventKind.REJECTED,
        "",
        job,
        part,
        "",
        new Event.Figures(
            n.count(),
            n.amount(),
            n.fromMin(),
            n.untilMin(),
            n.factor(),
            n.siPct(),
            n.pPct(),
            n.levelDownMm(),
            n.priority(),
            n.dueMin(),
            n.event(),
            OptionalInt.of(coats)));
  }

  /** Pieces that are bare again. */
  public Said stripped(int atMin, String job, String part, int count) {
    return add(atMin, EventKind.STRIPPED, "", job, part, "", figures(count, 0));
  }

  /** An earlier event that does not count. */
  public Said struck(int atMin, int event) {
    return add(atMin, EventKind.STRUCK, "", "", "", "", figures(0, event));
  }

  /** Everything ran as planned so far. */
  public Said asPlanned(int atMin) {
    return add(atMin, EventKind.AS_PLANNED, "", "", "", "", Event.Figures.NONE);
  }

  /** The log. */
  public EventLog log() {
    return new EventLog(events);
  }

  private static Event.Figures figures(int count, int event) {
    Event.Figures n = Event.Figures.NONE;
    return new Event.Figures(
        count == 0 ? OptionalInt.empty() : OptionalInt.of(count),
        n.amount(),
        n.fromMin(),
        n.untilMin(),
        n.factor(),
        n.siPct(),
        n.pPct(),
        n.levelDownMm(),
        n.priority(),
        n.dueMin(),
        event == 0 ? OptionalInt.empty() : OptionalInt.of(event),
        n.coats());
  }

  private Said add(
      int atMin,
      EventKind kind,
      String load,
      String job,
      String part,
      String station,
      Event.Figures figures) {
    events.add(
        new Event(
            events.size() + 1,
            atMin,
            kind,
            "hanger",
            load,
            job,
            part,
            station,
            "",
            "",
            "",
            List.of(),
            figures,
            ""));
    return this;
  }
}
