package spangle.solve;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;
import spangle.plan.clock.WeekPlan;

/** The week gets another plan; undone by giving it back the old one. */
final class PlanMove extends AbstractMove<WeekSolution> {
  /** Drawn when the search is over or nothing was found; never done. */
  static final PlanMove NONE = new PlanMove(null);

  private final @Nullable WeekPlan plan;

  PlanMove(@Nullable WeekPlan plan) {
    this.plan = plan;
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<WeekSolution> director) {
    return plan != null;
  }

  @Override
  protected AbstractMove<WeekSolution> createUndoMove(ScoreDirector<WeekSolution> director) {
    return new PlanMove(director.getWorkingSolution().getWeek().getPlan());
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<WeekSolution> director) {
    if (plan == null) {
      throw new IllegalStateException("a move without a plan was done");
    }
    Week week = director.getWorkingSolution().getWeek();
    director.beforeVariableChanged(week, "plan");
    week.setPlan(plan);
    director.afterVariableChanged(week, "plan");
  }

  @Override
  public PlanMove rebase(ScoreDirector<WeekSolution> destination) {
    return this;
  }
}
