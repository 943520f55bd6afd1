package spangle.report.week;

import java.util.OptionalInt;

/**
 * One row of the list of what waits for a person.
 *
 * @param kind what it is
 * @param danger what passing it over would do, in words
 * @param rank 0 is worst
 * @param jobId the order, or what it concerns
 * @param part part and pieces in words
 * @param code stable code
 * @param words the problem
 * @param who who must answer
 * @param dueMin by when; empty where no date hangs on it
 */
public record WaitingPoint(
    Kind kind,
    String danger,
    int rank,
    String jobId,
    String part,
    String code,
    String words,
    String who,
    OptionalInt dueMin) {
  /** What a row is. */
  public enum Kind {
    /** The audit says the plan breaks a rule. */
    FINDING("plan breaks a rule"),
    /** A gate keeps the part out. */
    HELD("held"),
    /** It did not fit into the week. */
    LEFT_OUT("left out"),
    /** It is planned past its due time. */
    LATE("late"),
    /** It is planned, with a doubt. */
    QUESTION("question");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** For the sheet. */
    public String words() {
      return words;
    }
  }
}
