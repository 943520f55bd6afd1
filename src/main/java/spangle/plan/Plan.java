package spangle.plan;

import java.util.List;
import java.util.Map;

/**
 * The answer to a brief: every lot of it is in exactly one load or left out with a reason.
 *
 * @param batches by line, machine and start
 * @param leftOut lots not planned
 * @param figures what the plan comes to
 * @param solve how it was found
 */
public record Plan(
    List<PlannedBatch> batches, List<LeftOut> leftOut, PlanFigures figures, SolveNote solve) {
  /** Copies the lists. */
  public Plan {
    batches = List.copyOf(batches);
    leftOut = List.copyOf(leftOut);
  }

  /** When the last visit of each planned lot ends, by lot. */
  public Map<String, Integer> lotEnds() {
    return LoadTimes.lotEnds(batches);
  }
}
