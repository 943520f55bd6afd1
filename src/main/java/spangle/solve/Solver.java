package spangle.solve;

import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.slf4j.LoggerFactory;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.SolveNote;
import spangle.plan.clock.Floor;
import spangle.plan.clock.WeekPlan;

/**
 * Plans a week: a first complete plan at once, then better ones until time, steps or patience are
 * over. One solver plans one week at a time; {@link #stop} may be called from any thread.
 */
public final class Solver {
  private final EnvironmentMode mode;
  private final AtomicBoolean stop = new AtomicBoolean();

  /** A solver as it is used every day. */
  public Solver() {
    this(EnvironmentMode.NON_REPRODUCIBLE);
  }

  /** A solver that checks itself as it goes. */
  Solver(EnvironmentMode mode) {
    // Once, before several threads ask for it together: else the log complains on the screen.
    LoggerFactory.getILoggerFactory();
    this.mode = mode;
  }

  /** Ends the search soon; {@link #solve} then returns the best plan so far. */
  public void stop() {
    stop.set(true);
  }

  /**
   * The best plan found. What does not fit is left out with its reason; no rule is ever broken.
   *
   * @throws IllegalArgumentException when the brief names what it does not say
   */
  public Plan solve(Brief brief, SolveOptions options, ProgressListener listener) {
    return solve(brief, List.of(), options, listener);
  }

  /**
   * The best plan found when the search starts from what an earlier plan has.
   *
   * @param earlier batches to start from, as far as they are still possible; empty to start anew
   * @throws IllegalArgumentException when the brief names what it does not say
   */
  public Plan solve(
      Brief brief, List<PlannedBatch> earlier, SolveOptions options, ProgressListener listener) {
    Floor floor = Floor.of(brief);
    WeekPlan best = new Search(floor, earlier, options, mode, stop, listener).best();
    String method =
        "Simulated annealing over immutable plans, OptaPlanner local search, "
            + options.threads()
            + (options.threads() == 1 ? " thread." : " threads.");
    return Tidy.of(best)
        .writer(earlier)
        .write(new SolveNote(options.seed(), options.steps(), method));
  }
}
