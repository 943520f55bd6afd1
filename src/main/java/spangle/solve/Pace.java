package spangle.solve;

import java.util.concurrent.atomic.AtomicBoolean;

/** Counts the moves tried and says how much of the search is over, by steps or by time. */
final class Pace {
  private static final int LOOK_AT_THE_CLOCK_EVERY = 256;
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

  /** One more move is tried; true when the search may go on. */
  boolean next() {
    tried++;
    if (tried % LOOK_AT_THE_CLOCK_EVERY == 0 || steps > 0) {
      look();
    }
    return fraction < 1;
  }

  private void look() {
    if (stop.get()) {
      fraction = 1;
    } else if (steps > 0) {
      fraction = (double) tried / steps;
    } else {
      fraction = (double) (System.nanoTime() - startNanos) / nanos;
    }
  }

  /** Part of the search that is over, 0 to 1. */
  double fraction() {
    return fraction;
  }

  boolean over() {
    return fraction >= 1;
  }

  long tried() {
    return tried;
  }
}
