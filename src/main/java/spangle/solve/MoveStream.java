package spangle.solve;

import java.util.Iterator;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekEdit;
import spangle.plan.clock.WeekPlan;
import spangle.solve.move.MoveBook;

/**
 * Draws moves without end. What the clock already shows to be worse than the dice of the acceptor
 * allow is drawn again at once, so that only moves that will be taken reach the score director.
 */
final class MoveStream implements MoveIteratorFactory<WeekSolution, PlanMove> {
  private static final int MOST_DRAWS = 2000;
  private final MoveBook book;
  private final WeekClock clock;
  private final Rounds rounds;
  private final Cooling cooling;
  private final Pace pace;
  private final WeekEdit edit = new WeekEdit();

  MoveStream(MoveBook book, WeekClock clock, Rounds rounds, Cooling cooling, Pace pace) {
    this.book = book;
    this.clock = clock;
    this.rounds = rounds;
    this.cooling = cooling;
    this.pace = pace;
  }

  @Override
  public long getSize(ScoreDirector<WeekSolution> director) {
    return 1_000_000;
  }

  @Override
  public Iterator<PlanMove> createOriginalMoveIterator(ScoreDirector<WeekSolution> director) {
    return createRandomMoveIterator(director, new Random(0));
  }

  @Override
  public Iterator<PlanMove> createRandomMoveIterator(
      ScoreDirector<WeekSolution> director, Random random) {
    WeekPlan plan = director.getWorkingSolution().getWeek().getPlan();
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return true;
      }

      @Override
      public PlanMove next() {
        return draw(plan);
      }
    };
  }

  private PlanMove draw(WeekPlan plan) {
    WeekPlan from = rounds.turn(plan);
    if (from != null && from != plan) {
      return new PlanMove(from);
    }
    for (int k = 0; k < MOST_DRAWS && pace.next(); k++) {
      if (!book.draw(plan, edit)) {
        continue;
      }
      if (!clock.attempt(plan, edit, plan.left()) || clock.broken() > plan.broken()) {
        continue;
      }
      long left = clock.left();
      if (left < plan.left()
          || (left == plan.left() && cooling.allows(clock.weighed() - plan.weighed()))) {
        return new PlanMove(clock.made());
      }
    }
    return PlanMove.NONE;
  }
}
