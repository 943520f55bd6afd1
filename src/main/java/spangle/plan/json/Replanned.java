package spangle.plan.json;

import java.util.List;
import spangle.plan.event.EventLog;

/**
 * That a plan was made in the middle of a week, and from what.
 *
 * @param atMin the minute it was made for
 * @param keptVersion letter of the plan people worked by until then
 * @param keptSha256 SHA-256 of that plan's file, 64 small hexadecimal digits (FIPS 180-4)
 * @param events number of the last event of the log it knew
 * @param recalled loads whose sheets were out and could not stay as they were
 */
public record Replanned(
    int atMin, String keptVersion, String keptSha256, int events, List<Recalled> recalled) {
  /** Copies the list. */
  public Replanned {
    recalled = List.copyOf(recalled);
  }

  /**
   * A sheet that was out and is not valid any more.
   *
   * @param load number of the load in the plan before
   * @param why what stood against it
   */
  public record Recalled(String load, String why) {}

  /** Up to which number events of the log speak of loads of the plan before this one. */
  public int known(EventLog log) {
    return Math.min(events, log.lastUntil(atMin));
  }
}
