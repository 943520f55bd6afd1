package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.function.LongConsumer;

/** Many inputs by number: none may throw, none may take long; the number gives the input again. */
final class Many {
  /** Inputs of each kind in the thorough runs. */
  static final long THOROUGH = 100_000;

  private static final long LONGEST_NS = 5_000_000_000L;

  private Many() {}

  static void inputs(long count, LongConsumer one) {
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    for (long seed = 0; seed < count; seed++) {
      long start = clock.getCurrentThreadCpuTime();
      try {
        one.accept(seed);
      } catch (RuntimeException | AssertionError | StackOverflowError broken) {
        throw new AssertionError("input number " + seed + ": " + broken.getMessage(), broken);
      }
      assertThat(clock.getCurrentThreadCpuTime() - start)
          .as("nanoseconds of work for input number %d", seed)
          .isLessThan(LONGEST_NS);
    }
  }
}
