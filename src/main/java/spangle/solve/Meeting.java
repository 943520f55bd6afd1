package spangle.solve;

import java.util.concurrent.Phaser;
import org.jspecify.annotations.Nullable;
import spangle.plan.clock.WeekPlan;

/**
 * Where searching threads compare their best plans. Orderly, each waits for the others, so that
 * what they take home does not hang on who was quicker; otherwise each sees what is there.
 */
final class Meeting {
  private final @Nullable WeekPlan[] brought;
  private final boolean orderly;
  private @Nullable WeekPlan chosen;
  private final Phaser all;

  Meeting(int threads, boolean orderly) {
    this.brought = new WeekPlan[threads];
    this.orderly = orderly;
    this.all =
        new Phaser(threads) {
          @Override
          protected boolean onAdvance(int phase, int registered) {
            choose();
            return super.onAdvance(phase, registered);
          }
        };
  }

  /** Brings a thread's best plan; the best of all, of equals that of the first thread. */
  WeekPlan compare(int thread, WeekPlan best) {
    bring(thread, best);
    if (orderly) {
      all.arriveAndAwaitAdvance();
    } else {
      choose();
    }
    return chosen(best);
  }

  private synchronized void bring(int thread, WeekPlan best) {
    brought[thread] = best;
  }

  private synchronized void choose() {
    WeekPlan found = null;
    for (WeekPlan plan : brought) {
      if (plan != null && (found == null || Bulletin.better(plan, found))) {
        found = plan;
      }
    }
    chosen = found;
  }

  private synchronized WeekPlan chosen(WeekPlan own) {
    return chosen == null ? own : chosen;
  }

  /** A thread goes and is not waited for any more. */
  void leave() {
    all.arriveAndDeregister();
  }
}
