package spangle.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import spangle.plan.LeftOut;
import spangle.plan.PlannedBatch;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Row;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;

/**
 * Takes batches that found no time out of the rows of a finished search. They only waited there to
 * be rescued; without them the order in which a line is fed is that of the written plan alone, so
 * that the plan can be timed again from what is written.
 */
final class Tidy {
  private final WeekPlan plan;
  private final Map<String, LeftOut> outside;

  private Tidy(WeekPlan plan, Map<String, LeftOut> outside) {
    this.plan = plan;
    this.outside = outside;
  }

  /** The same plan without them where that is no worse, else as it was. */
  static Tidy of(WeekPlan found) {
    if (found.left() == 0) {
      return new Tidy(found, Map.of());
    }
    List<LeftOut> left = new LeftOuts(found, Map.of()).list();
    WeekPlan without = new WeekClock(found.floor).plan(running(found));
    boolean noWorse =
        without.left() == 0
            && without.broken() <= found.broken()
            && without.weighed() <= found.weighed();
    if (!noWorse) {
      return new Tidy(found, Map.of());
    }
    Map<String, LeftOut> outside = new HashMap<>();
    left.forEach(each -> outside.put(each.lotId(), each));
    return new Tidy(without, outside);
  }

  /** Its rows without the batches that found no time. */
  static Batch[][][] running(WeekPlan found) {
    Batch[][][] rows = found.batches();
    for (int l = 0; l < rows.length; l++) {
      for (int m = 0; m < rows[l].length; m++) {
        Row row = found.line(l).row(m);
        rows[l][m] =
            IntStream.range(0, row.size())
                .filter(k -> row.runs(k) || k < row.front)
                .mapToObj(row::batch)
                .toArray(Batch[]::new);
      }
    }
    return rows;
  }

  PlanWriter writer(List<PlannedBatch> earlier) {
    HalfDone.Rest rest = HalfDone.without(plan, outside);
    if (!rest.outside().keySet().equals(outside.keySet())) {
      rest = Refill.of(rest);
    }
    return new PlanWriter(rest.plan(), rest.outside(), earlier);
  }
}
