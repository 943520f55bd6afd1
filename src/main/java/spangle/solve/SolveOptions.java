package spangle.solve;

/**
 * How long and how to search.
 *
 * @param seconds most seconds in all; steps count instead when they are above zero
 * @param steps moves to try per thread; the same seed, steps and threads give the same plan. 0 =
 *     search by time
 * @param seed random seed
 * @param threads searches run side by side, each with its own seed; the best plan counts
 */
public record SolveOptions(double seconds, long steps, long seed, int threads) {
  /** Refuses a search that cannot run. */
  public SolveOptions {
    if (threads < 1) {
      throw new IllegalArgumentException("threads: " + threads + "; at least 1 is needed");
    }
    if (steps < 0 || !(seconds >= 0)) {
      throw new IllegalArgumentException(
          "steps " + steps + ", seconds " + seconds + ": neither may be below zero");
    }
  }

  /** Thirty seconds on two threads. */
  public static SolveOptions usual() {
    return new SolveOptions(30, 0, 1, 2);
  }

  /** Whether moves are counted instead of seconds. */
  boolean bySteps() {
    return steps > 0;
  }
}
