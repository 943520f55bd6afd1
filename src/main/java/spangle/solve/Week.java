package spangle.solve;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.variable.PlanningVariable;
import spangle.plan.clock.WeekPlan;

/** The one thing that is planned: the week, whose one variable holds a whole immutable plan. */
@PlanningEntity
public class Week {
  @PlanningVariable(valueRangeProviderRefs = "plans")
  private @Nullable WeekPlan plan;

  /** For cloning. */
  Week() {}

  Week(WeekPlan plan) {
    this.plan = plan;
  }

  /** The plan; never missing once solving has begun. */
  public WeekPlan getPlan() {
    if (plan == null) {
      throw new IllegalStateException("the week has no plan yet");
    }
    return plan;
  }

  /** Called by moves only. */
  public void setPlan(WeekPlan plan) {
    this.plan = plan;
  }

  long term(int term) {
    return getPlan().term(term);
  }
}
