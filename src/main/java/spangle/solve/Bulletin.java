package spangle.solve;

import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Tally;
import spangle.plan.clock.WeekPlan;

/** Keeps the best plan of all threads and tells the listener of every better one. */
final class Bulletin {
  private final ProgressListener listener;
  private final long startNanos = System.nanoTime();
  private @Nullable WeekPlan best;
  private int improvements = -1;

  Bulletin(ProgressListener listener) {
    this.listener = listener;
  }

  static boolean better(WeekPlan plan, WeekPlan than) {
    if (plan.broken() != than.broken()) {
      return plan.broken() < than.broken();
    }
    if (plan.left() != than.left()) {
      return plan.left() < than.left();
    }
    return plan.weighed() < than.weighed();
  }

  synchronized void offer(WeekPlan plan) {
    if (best != null && !better(plan, best)) {
      return;
    }
    best = plan;
    improvements++;
    listener.better(
        new Progress(
            seconds(),
            plan.left(),
            plan.weighed(),
            plan.term(Tally.LATE_LOTS),
            plan.term(Tally.BATCHES),
            improvements));
  }

  synchronized WeekPlan best() {
    if (best == null) {
      throw new IllegalStateException("no plan has been offered");
    }
    return best;
  }

  double seconds() {
    return (System.nanoTime() - startNanos) / 1e9;
  }
}
