package spangle.solve;

import java.util.concurrent.atomic.AtomicBoolean;

/** Counts the moves tried and says how much of the search is over, by steps or by time. */
final class Pace {
  private static final int LOOK_EVERY = 256;
  private final long steps;
  private final long startNanos;
  private final long nanos;
  private final AtomicBoolean stop;
  private long tried;
  private double fraction;

  private Pace(long steps, long nanos, AtomicBoolean stop) {
    this.steps = steps;
    this.nanos = nanos;
    this.stop = stop;
    this.startNanos = System.nanoTime();
  }

  static Pace steps(long steps, AtomicBoolean stop) {
    return new Pace(Math.max(1, steps), 0, stop);
  }

  static Pace seconds(double seconds, AtomicBoolean stop) {
    return new Pace(0, Math.max(1, (long) (seconds * 1e9)), stop);
  }

  /** Counts one more move; false when the search is over. */
  boolean next() {
    tried++;
    if (tried % LOOK_EVERY == 0 || tried == steps) {
      look();
    }
    return fraction < 1;
  }

  private void look() {
    if (stop.get()) {
      fraction = 1;
    } else if (fraction < 1) {
      fraction =
          steps > 0 ? (double) tried / steps : (double) (System.nanoTime() - startNanos) / nanos;
    }
  }

  /** Ends the search. */
  void end() {
    fraction = 1;
  }

  /** Whether moves are counted, so that the same seed gives the same plan. */
  boolean bySteps() {
    return steps > 0;
  }

  /** Length of a search by time. */
  double seconds() {
    return nanos / 1e9;
  }

  /** Part of the search that is over, 0 to 1. */
  double fraction() {
    return Math.min(1, fraction);
  }

  boolean over() {
    return fraction >= 1;
  }

  long tried() {
    return tried;
  }

  /** Moves that can still be tried: exact by steps, guessed from the speed so far by time. */
  long remaining() {
    if (steps > 0) {
      return Math.max(0, steps - tried);
    }
    look();
    return fraction >= 1 ? 0 : (long) (tried * (1 - fraction) / Math.max(1e-9, fraction));
  }
}
