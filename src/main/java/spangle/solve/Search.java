package spangle.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.slf4j.LoggerFactory;
import spangle.plan.PlannedBatch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;

/** The search of one week from the first plan to the best found, on one or more threads. */
final class Search {
  private final Floor floor;
  private final List<PlannedBatch> earlier;
  private final SolveOptions options;
  private final EnvironmentMode mode;
  private final AtomicBoolean stop;
  private final Bulletin bulletin;

  Search(
      Floor floor,
      List<PlannedBatch> earlier,
      SolveOptions options,
      EnvironmentMode mode,
      AtomicBoolean stop,
      ProgressListener listener) {
    this.floor = floor;
    this.earlier = List.copyOf(earlier);
    this.options = options;
    this.mode = mode;
    this.stop = stop;
    this.bulletin = new Bulletin(listener);
  }

  WeekPlan best() {
    WeekPlan first = new Builder(floor, new WeekClock(floor)).build(earlier);
    bulletin.offer(first);
    if (floor.lots.length == 0 || first.batches().length == 0 || nothingToDo()) {
      return first;
    }
    // The logging has to be up before two threads ask for it at once, or it says so on the screen.
    LoggerFactory.getILoggerFactory();
    Meeting meeting = new Meeting(options.threads(), options.bySteps());
    ExecutorService threads = Executors.newFixedThreadPool(options.threads());
    try {
      List<Future<WeekPlan>> found = new ArrayList<>();
      for (int t = 0; t < options.threads(); t++) {
        Climb climb = new Climb(floor, gently(t), options, t, meeting, mode, stop, bulletin);
        found.add(threads.submit(() -> climb.from(first)));
      }
      WeekPlan best = first;
      for (Future<WeekPlan> each : found) {
        WeekPlan plan = each.get();
        if (Bulletin.better(plan, best)) {
          best = plan;
        }
      }
      return best;
    } catch (InterruptedException e) {
      stop.set(true);
      Thread.currentThread().interrupt();
      return bulletin.best();
    } catch (ExecutionException e) {
      throw new IllegalStateException("a search thread failed", e.getCause());
    } finally {
      threads.shutdown();
    }
  }

  /**
   * A plan people work by is not shuffled by any thread. One that a search only starts from may
   * have become a bad start, such as when a colour it begins with comes days later: every second
   * thread searches from the full heat, and the better plan counts.
   */
  private boolean gently(int thread) {
    return !earlier.isEmpty() && (thread % 2 == 0 || !floor.brief.announced().isEmpty());
  }

  private boolean nothingToDo() {
    return options.steps() == 0 && options.seconds() == 0;
  }
}
