package spangle.cli;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;

/**
 * Ctrl-C while a plan is made: the search ends, the best plan so far is written whole, and the
 * program goes with the exit code it would have had. Where that takes longer than a minute it goes
 * without; files are replaced whole or not at all in any case.
 */
final class StopSwitch {
  private static final long LONGEST_S = 60;
  private static final int NONE = -1;

  private final Runnable stop;
  private final PrintWriter err;
  private final CountDownLatch done = new CountDownLatch(1);
  private volatile int code = NONE;

  /**
   * A switch for one run.
   *
   * @param stop ends the search; called from another thread
   * @param err where the person is told
   */
  StopSwitch(Runnable stop, PrintWriter err) {
    this.stop = stop;
    this.err = err;
  }

  /** Does the work; its exit code. */
  int guard(IntSupplier work) {
    Thread onStop = new Thread(this::stopAndWait, "stop");
    Runtime.getRuntime().addShutdownHook(onStop);
    try {
      code = work.getAsInt();
      return code;
    } finally {
      done.countDown();
      removeHook(onStop);
    }
  }

  private void stopAndWait() {
    stop.run();
    err.println();
    err.println("Stopped: the best plan so far is written.");
    err.flush();
    try {
      if (done.await(LONGEST_S, TimeUnit.SECONDS) && code != NONE) {
        Runtime.getRuntime().halt(code);
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private static void removeHook(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException goingDownAlready) {
      // The hook itself is what is running: there is nothing left to take away.
      return;
    }
  }
}
