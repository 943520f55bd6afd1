package spangle.report.week;

import java.util.List;
import java.util.OptionalInt;
import spangle.plan.Kit;

/**
 * How far a kit comes by the plan.
 *
 * @param kit the kit
 * @param state one of four, in words
 * @param setsNow sets that are complete now
 * @param setsPlanned sets complete when the plan has run
 * @param setsByDay complete sets at the end of each day of the week
 * @param completeMin when the last set is complete; empty where the plan does not complete it
 * @param blocker what holds it, in words; empty when nothing does
 * @param spreadMin minutes between its first and its last planned piece; empty where none is
 *     planned
 * @param powderLots where it asks for one maker's lot of powder, the lot of each powder in words;
 *     empty where it does not ask
 */
public record KitStatus(
    Kit kit,
    State state,
    int setsNow,
    int setsPlanned,
    List<Integer> setsByDay,
    OptionalInt completeMin,
    String blocker,
    OptionalInt spreadMin,
    List<String> powderLots) {
  /** Copies the lists. */
  public KitStatus {
    setsByDay = List.copyOf(setsByDay);
    powderLots = List.copyOf(powderLots);
  }

  /** Green, amber and red, as words. */
  public enum State {
    /** All sets are complete now. */
    COMPLETE("complete"),
    /** All sets will be complete by the due time. */
    ON_TIME("on time"),
    /** All sets will be complete, but past the due time. */
    LATE("late"),
    /** The plan does not complete it. */
    BLOCKED("blocked");

    private final String words;

    State(String words) {
      this.words = words;
    }

    /** For the sheet. */
    public String words() {
      return words;
    }
  }
}
