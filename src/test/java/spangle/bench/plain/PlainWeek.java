package spangle.bench.plain;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import spangle.plan.Goals;

/** What plain OptaPlanner works on. */
@PlanningSolution
public class PlainWeek {
  @PlanningEntityCollectionProperty private List<PlainOven> ovens = List.of();

  @ValueRangeProvider(id = "lots")
  private List<PlainLot> lots = List.of();

  @PlanningScore private @Nullable HardSoftLongScore score;
  private @Nullable Goals goals;

  /** For cloning. */
  PlainWeek() {}

  PlainWeek(List<PlainOven> ovens, List<PlainLot> lots, Goals goals) {
    this.ovens = ovens;
    this.lots = lots;
    this.goals = goals;
  }

  /** The ovens. */
  public List<PlainOven> getOvens() {
    return ovens;
  }

  /** The lots. */
  public List<PlainLot> getLots() {
    return lots;
  }

  /** The score. */
  public @Nullable HardSoftLongScore getScore() {
    return score;
  }

  /** Called by OptaPlanner only. */
  public void setScore(HardSoftLongScore score) {
    this.score = score;
  }

  Goals goals() {
    return Objects.requireNonNull(goals);
  }
}
