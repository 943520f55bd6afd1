package spangle.fit.hang;

import java.time.Duration;

/**
 * How long a search for better patterns may take. Without a time limit the same effort gives the
 * same patterns on every machine.
 *
 * @param rounds most rounds of taking a few carriers down and hanging them anew
 * @param atMost longest time; the search may stop earlier for want of rounds
 * @param seed start of the chance numbers
 */
public record HangEffort(long rounds, Duration atMost, long seed) {
  private static final Duration UNLIMITED = Duration.ofDays(365);

  /** Refuses an effort that never ends or never begins. */
  public HangEffort {
    if (rounds < 0 || atMost.isNegative()) {
      throw new IllegalArgumentException("effort: rounds and time must not be negative");
    }
  }

  /** So many rounds, however long they take: reproducible. */
  public static HangEffort rounds(long rounds) {
    return new HangEffort(rounds, UNLIMITED, 1);
  }

  /** As many rounds as go into the time: not reproducible. */
  public static HangEffort within(Duration atMost) {
    return new HangEffort(Long.MAX_VALUE, atMost, 1);
  }
}
