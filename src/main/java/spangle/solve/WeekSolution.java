package spangle.solve;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.constraintweight.ConstraintConfigurationProvider;
import org.optaplanner.core.api.domain.solution.PlanningEntityProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import spangle.plan.clock.WeekPlan;

/** What OptaPlanner works on: one week, the weights of its goals, and its score. */
@PlanningSolution
public class WeekSolution {
  @ConstraintConfigurationProvider private GoalWeights weights;

  @PlanningEntityProperty private Week week;

  @ValueRangeProvider(id = "plans")
  private List<WeekPlan> plans;

  @PlanningScore private @Nullable HardMediumSoftLongScore score;

  /** For cloning. */
  @SuppressWarnings("NullAway.Init")
  WeekSolution() {}

  WeekSolution(GoalWeights weights, WeekPlan plan) {
    this.weights = weights;
    this.week = new Week(plan);
    this.plans = List.of(plan);
  }

  /** The week. */
  public Week getWeek() {
    return week;
  }

  /** The score; missing before it is first calculated. */
  public @Nullable HardMediumSoftLongScore getScore() {
    return score;
  }

  /** Called by OptaPlanner only. */
  public void setScore(HardMediumSoftLongScore score) {
    this.score = score;
  }

  /** The weights. */
  public GoalWeights getWeights() {
    return weights;
  }

  /** Plans known beforehand; moves make the others. */
  public List<WeekPlan> getPlans() {
    return plans;
  }
}
