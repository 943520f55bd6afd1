package spangle.plan.event;

import static spangle.plan.event.EventField.AMOUNT;
import static spangle.plan.event.EventField.COATS;
import static spangle.plan.event.EventField.COUNT;
import static spangle.plan.event.EventField.DUE;
import static spangle.plan.event.EventField.EVENT;
import static spangle.plan.event.EventField.FACTOR;
import static spangle.plan.event.EventField.FROM;
import static spangle.plan.event.EventField.GATE;
import static spangle.plan.event.EventField.JOB;
import static spangle.plan.event.EventField.LEVEL_DOWN_MM;
import static spangle.plan.event.EventField.LOAD;
import static spangle.plan.event.EventField.LOT;
import static spangle.plan.event.EventField.MATERIAL;
import static spangle.plan.event.EventField.OF;
import static spangle.plan.event.EventField.OPENED_BY;
import static spangle.plan.event.EventField.PART;
import static spangle.plan.event.EventField.PRIORITY;
import static spangle.plan.event.EventField.P_PCT;
import static spangle.plan.event.EventField.SI_PCT;
import static spangle.plan.event.EventField.STATION;
import static spangle.plan.event.EventField.UNTIL;

import java.util.List;
import java.util.Locale;

/** What can happen in a week, and what must be said about it. */
public enum EventKind {
  /** Good pieces came from bending. */
  ARRIVED(List.of(JOB, PART, COUNT), List.of()),
  /** Pieces that were to come, come at another time: a late or short delivery. */
  EXPECTED(List.of(JOB, PART, COUNT, UNTIL), List.of()),
  /** The sheet of a load was handed out. */
  RELEASED(List.of(LOAD), List.of()),
  /** A sheet was taken back before anything hung. */
  WITHDRAWN(List.of(LOAD), List.of()),
  /** A load hangs. */
  HUNG(List.of(LOAD), List.of()),
  /** A load that hung, and with which no station has begun, was taken off its carrier again. */
  TAKEN_DOWN(List.of(LOAD), List.of()),
  /** A load went into its oven or kettle. */
  STARTED(List.of(LOAD), List.of()),
  /** A load is finished and off its carrier. */
  DONE(List.of(LOAD), List.of()),
  /** Up to now everything ran as the plan says, except what other events say. */
  AS_PLANNED(List.of(), List.of()),
  /** Finished pieces do not pass: they are coated over, or stripped where they bear too much. */
  REJECTED(List.of(JOB, PART, COUNT), List.of(COATS, LOAD)),
  /** Pieces that bore too much are bare again and can be coated anew. */
  STRIPPED(List.of(JOB, PART, COUNT), List.of()),
  /**
   * Pieces are beyond saving: of those that wait to be hung, or of rejected ones that wait for
   * their second round. What hangs or is good is not scrapped.
   */
  SCRAPPED(List.of(JOB, PART, COUNT, OF), List.of()),
  /** A load under suspicion was looked at and is good. */
  INSPECTED(List.of(LOAD), List.of()),
  /**
   * A station, oven or kettle is out of use; without an end, until it is reported repaired. Of a
   * station with several places {@code count} says how many are out, counted from the last.
   */
  BROKEN(List.of(STATION), List.of(UNTIL, COUNT)),
  /** It works again. */
  REPAIRED(List.of(STATION), List.of()),
  /** From now on every stay at a station takes longer (old acid); factor 1 ends it. */
  SLOW(List.of(STATION, FACTOR), List.of()),
  /**
   * People are missing: one in {@code factor} is there. Of several places as many stand empty, a
   * single one works so much less of each stretch.
   */
  ABSENT(List.of(STATION, FACTOR, UNTIL), List.of(FROM)),
  /** Powder, paint or zinc came. */
  DELIVERED(List.of(MATERIAL, AMOUNT), List.of(LOT)),
  /** What was ordered of a material comes at another time. */
  SLIPPED(List.of(MATERIAL, UNTIL), List.of()),
  /** The steel's certificate came. */
  CERTIFICATE(List.of(JOB, PART, SI_PCT, P_PCT), List.of()),
  /** People opened a gate. */
  GATE_OPENED(List.of(JOB, PART, GATE, OPENED_BY), List.of()),
  /** A job counts more or less, or is wanted at another time. */
  PRIORITY_CHANGED(List.of(JOB), List.of(PART, PRIORITY, DUE)),
  /** What is not yet hung of a job is not wanted any more. */
  CANCELLED(List.of(JOB), List.of(PART)),
  /** A bath stands lower than usual. */
  LEVEL(List.of(STATION, LEVEL_DOWN_MM), List.of()),
  /** An earlier event was written by mistake and does not count. */
  STRUCK(List.of(EVENT), List.of());

  @SuppressWarnings("ImmutableEnumChecker") // a copy that nobody can change
  private final List<EventField> needed;

  @SuppressWarnings("ImmutableEnumChecker") // a copy that nobody can change
  private final List<EventField> allowed;

  EventKind(List<EventField> needed, List<EventField> allowed) {
    this.needed = List.copyOf(needed);
    this.allowed = List.copyOf(allowed);
  }

  /** The word in files and on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What must be said. */
  public List<EventField> needed() {
    return needed;
  }

  /** What may be said besides; a note always may. */
  public List<EventField> allowed() {
    return allowed;
  }

  /** Whether it speaks of a load of a plan. */
  public boolean ofLoad() {
    return needed.contains(LOAD);
  }
}
