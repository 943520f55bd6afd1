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

  /**
   * The same for a line walked whole: the most, and the fewest where steps are few. Measured at
   * 250, 500, 1000 and 1500 on two weeks of some 230 lots, five seeds each, 30 s on one thread:
   * slower cooling leaves out less and none of the seeds stays behind.
   */
  private static final long PER_LOT_WALKED = 1_500;

  private static final long FEWEST_WALKED = 500;

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
    Rounds rounds = new Rounds(heat, pace, floor.lots.length, whole(), meeting, thread, first);
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

  /** Moves of a whole round; of a line walked whole, no more than half of those there are. */
  private long whole() {
    long lots = floor.lots.length;
    if (!floor.isCoupled()) {
      return Math.max(FEWEST, PER_LOT * lots);
    }
    long most = options.bySteps() ? options.steps() / 2 : Long.MAX_VALUE;
    return Math.max(FEWEST, Math.max(FEWEST_WALKED * lots, Math.min(PER_LOT_WALKED * lots, most)));
  }
}
