package spangle.report;

import java.util.List;

/**
 * What hours beyond the shifts would buy a week that is too full. Every offer is a whole plan that
 * passed the audit.
 *
 * @param state how far the question went
 * @param tried how many ways to work were tried: each stretch of overtime alone, all of them
 *     together
 * @param lotsOut lots the plan leaves out
 * @param lotsTried how many of them were put into the longer hours, the most urgent first
 * @param beyondHours how many of them no hours can help: material, zinc level, no place at all
 * @param jobsLate jobs with a late or left-out lot
 * @param offers what is worth saying, the one that helps most first
 */
public record Overtime(
    State state,
    int tried,
    int lotsOut,
    int lotsTried,
    int beyondHours,
    int jobsLate,
    List<Offer> offers) {
  /** Nothing is late or left out, or nobody asked. */
  public static final Overtime NONE = new Overtime(State.NOT_NEEDED, 0, 0, 0, 0, 0, List.of());

  /** How far the question went. */
  public enum State {
    /** Nothing is late or left out. */
    NOT_NEEDED,
    /** The shop file allows no overtime from now on. */
    NOT_ALLOWED,
    /** Lots and allowed stretches are so many that trying would take longer than the plan. */
    TOO_MUCH_OUT,
    /** All that is allowed was tried. */
    TRIED
  }

  /** Copies the list. */
  public Overtime {
    offers = List.copyOf(offers);
  }

  /**
   * A stretch that is worked besides the shifts.
   *
   * @param startMin minute of the week
   * @param endMin when the last work in it ends, on a full quarter of an hour
   * @param lines names of the lines that work
   * @param people how many must stay; 0 where the shop file does not say
   */
  public record Hours(int startMin, int endMin, List<String> lines, int people) {
    /** Copies the list. */
    public Hours {
      lines = List.copyOf(lines);
    }

    /** Length. */
    public int minutes() {
      return endMin - startMin;
    }
  }

  /**
   * A part of which lots come in that are left out otherwise.
   *
   * @param jobId the order
   * @param label the part in words
   * @param pieces how many come in
   * @param endMin when the last of them is finished
   * @param inTime whether all of them are finished when they are due
   */
  public record Gain(String jobId, String label, int pieces, int endMin, boolean inTime) {}

  /**
   * What some hours buy.
   *
   * @param hours the hours
   * @param lotsIn lots that come in
   * @param gains the same by part
   * @param jobsInTime jobs that were late or left out and are wholly in time
   */
  public record Offer(List<Hours> hours, int lotsIn, List<Gain> gains, List<String> jobsInTime) {
    /** Copies the lists. */
    public Offer {
      hours = List.copyOf(hours);
      gains = List.copyOf(gains);
      jobsInTime = List.copyOf(jobsInTime);
    }

    /** Minutes that somebody stays, times the people that must; one where that is not said. */
    public long costMin() {
      return hours.stream().mapToLong(h -> (long) h.minutes() * Math.max(1, h.people())).sum();
    }
  }
}
