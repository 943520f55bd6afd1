package spangle.plan.event;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Writes event logs for tests, a few words at a time. */
public final class Said {
  private static final OptionalInt NOT_SAID = OptionalInt.empty();

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
    return add(
        atMin,
        EventKind.BROKEN,
        "",
        "",
        "",
        station,
        figures(NOT_SAID, OptionalInt.of(untilMin), NOT_SAID, NOT_SAID));
  }

  /** So many places of a station are out of use. */
  public Said placesOut(int atMin, String station, int count) {
    return add(atMin, EventKind.BROKEN, "", "", "", station, pieces(count));
  }

  /** Pieces that did not pass. */
  public Said rejected(int atMin, String job, String part, int count) {
    return add(atMin, EventKind.REJECTED, "", job, part, "", pieces(count));
  }

  /** Pieces with so many coats that did not pass. */
  public Said rejected(int atMin, String job, String part, int count, int coats) {
    return add(
        atMin,
        EventKind.REJECTED,
        "",
        job,
        part,
        "",
        figures(OptionalInt.of(count), NOT_SAID, NOT_SAID, OptionalInt.of(coats)));
  }

  /** Pieces that are bare again. */
  public Said stripped(int atMin, String job, String part, int count) {
    return add(atMin, EventKind.STRIPPED, "", job, part, "", pieces(count));
  }

  /** Pieces beyond saving. */
  public Said scrapped(int atMin, String job, String part, int count, ScrapOf of) {
    return add(atMin, EventKind.SCRAPPED, "", job, part, "", of.word(), pieces(count));
  }

  /** An earlier event that does not count. */
  public Said struck(int atMin, int event) {
    return add(
        atMin,
        EventKind.STRUCK,
        "",
        "",
        "",
        "",
        figures(NOT_SAID, NOT_SAID, OptionalInt.of(event), NOT_SAID));
  }

  /** Everything ran as planned so far. */
  public Said asPlanned(int atMin) {
    return add(atMin, EventKind.AS_PLANNED, "", "", "", "", Event.Figures.NONE);
  }

  /** The log. */
  public EventLog log() {
    return new EventLog(events);
  }

  private static Event.Figures pieces(int count) {
    return figures(OptionalInt.of(count), NOT_SAID, NOT_SAID, NOT_SAID);
  }

  private static Event.Figures figures(
      OptionalInt count, OptionalInt untilMin, OptionalInt event, OptionalInt coats) {
    Event.Figures n = Event.Figures.NONE;
    return new Event.Figures(
        count,
        n.amount(),
        n.fromMin(),
        untilMin,
        n.factor(),
        n.siPct(),
        n.pPct(),
        n.levelDownMm(),
        n.priority(),
        n.dueMin(),
        event,
        coats);
  }

  private Said add(
      int atMin,
      EventKind kind,
      String load,
      String job,
      String part,
      String station,
      Event.Figures figures) {
    return add(atMin, kind, load, job, part, station, "", figures);
  }

  private Said add(
      int atMin,
      EventKind kind,
      String load,
      String job,
      String part,
      String station,
      String of,
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
            of,
            List.of(),
            figures,
            ""));
    return this;
  }
}
