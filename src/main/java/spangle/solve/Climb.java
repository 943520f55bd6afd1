package spangle.solve;

import java.util.concurrent.atomic.AtomicBoolean;
import org.optaplanner.core.config.solver.EnvironmentMode;
import spangle.plan.clock.Floor;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;
import spangle.solve.move.MoveBook;

/** One thread's search. */
final class Climb {
  /**
   * Moves of a whole round for each lot; a line walked whole takes many times as long for one.
   * Measured at 2000 to 200000 on a dozen weeks of 250 and 500 lots: many short rounds end lower
   * than few long ones, above all where a long one may freeze in any of several states.
   */
  private static final long PER_LOT = 5_000;

  private static final long PER_LOT_WALKED = 500;
  private static final long FEWEST = 50_000;

  private final Floor floor;
  private final boolean gently;
  private final SolveOptions options;
  private final long seed;
  private final int thread;
  private final Meeting meeting;
  private final EnvironmentMode mode;
  private final AtomicBoolean stop;
  private final Bulletin bulletin;

  Climb(
      Floor floor,
      boolean gently,
      SolveOptions options,
      int thread,
      Meeting meeting,
      EnvironmentMode mode,
      AtomicBoolean stop,
      Bulletin bulletin) {
    this.floor = floor;
    this.gently = gently;
    this.options = options;
    this.seed = options.seed() + 7919L * thread;
    this.thread = thread;
    this.meeting = meeting;
    this.mode = mode;
    this.stop = stop;
    this.bulletin = bulletin;
  }

  WeekPlan from(WeekPlan first) {
    try {
      return climb(first);
    } finally {
      meeting.leave();
    }
  }

  private WeekPlan climb(WeekPlan first) {
    Pace pace =
        options.bySteps()
            ? Pace.steps(options.steps(), stop)
            : Pace.seconds(options.seconds(), stop);
    Heat heat = gently ? Heat.of(floor, first).gentle() : Heat.of(floor, first);
    long perLot = floor.isCoupled() ? PER_LOT_WALKED : PER_LOT;
    long whole = Math.max(FEWEST, perLot * floor.lots.length);
    Rounds rounds = new Rounds(heat, pace, floor.lots.length, whole, meeting, thread, first);
    Cooling cooling = new Cooling(rounds, seed);
    MoveBook book = new MoveBook(floor, first, seed);
    MoveStream moves = new MoveStream(book, new WeekClock(floor), rounds, cooling, pace);
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
