package spangle.solve;

import java.util.concurrent.atomic.AtomicBoolean;
import org.optaplanner.core.config.solver.EnvironmentMode;
import spangle.plan.clock.Floor;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;
import spangle.solve.move.MoveBook;

/** One thread's search. */
final class Climb {
  private final Floor floor;
  private final SolveOptions options;
  private final long seed;
  private final EnvironmentMode mode;
  private final AtomicBoolean stop;
  private final Bulletin bulletin;

  Climb(
      Floor floor,
      SolveOptions options,
      long seed,
      EnvironmentMode mode,
      AtomicBoolean stop,
      Bulletin bulletin) {
    this.floor = floor;
    this.options = options;
    this.seed = seed;
    this.mode = mode;
    this.stop = stop;
    this.bulletin = bulletin;
  }

  WeekPlan from(WeekPlan first) {
    Pace pace =
        options.bySteps()
            ? Pace.steps(options.steps(), stop)
            : Pace.seconds(options.seconds(), stop);
    Heat heat = Heat.of(floor);
    Cooling cooling = new Cooling(heat.hot(), heat.cold(), pace);
    MoveBook book = new MoveBook(floor, first, seed);
    MoveStream moves = new MoveStream(book, new WeekClock(floor), cooling, pace);
    WeekSolution best =
        new Anneal(mode)
            .run(
                new WeekSolution(new GoalWeights(floor.goals), first),
                moves,
                cooling,
                pace,
                seed,
                (solution, score) -> bulletin.offer(solution.getWeek().getPlan()));
    return best.getWeek().getPlan();
  }
}
