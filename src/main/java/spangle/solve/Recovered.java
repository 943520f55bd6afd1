package spangle.solve;

import java.util.ArrayList;
import java.util.List;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.Row;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;

/**
 * A written plan that is timed again may come out a few minutes different where its search left
 * work standing in the middle of a row; a step that was planned to the last minute its surface
 * keeps then finds no time any more. Such work is given another place with every date kept, so that
 * a promise or an answer does not begin with a plan in which it is lost.
 */
final class Recovered {
  private Recovered() {}

  /** The same plan with all its work in time; unchanged where nothing is lost or no place found. */
  static WeekPlan of(WeekPlan again) {
    List<String> lost = new ArrayList<>();
    Batch[][][] rows = again.batches();
    for (int l = 0; l < rows.length; l++) {
      for (int m = 0; m < rows[l].length; m++) {
        rows[l][m] = running(again, again.line(l).row(m), lost);
      }
    }
    if (lost.isEmpty()) {
      return again;
    }
    WeekPlan without = new WeekClock(again.floor).plan(rows);
    return new Inserter(without)
        .into(lost)
        .filter(whole -> whole.left() <= again.left() && whole.broken() <= again.broken())
        .orElse(again);
  }

  /** The batches of a row that have a time; the lots of the others are noted. */
  private static Batch[] running(WeekPlan plan, Row row, List<String> lost) {
    List<Batch> running = new ArrayList<>();
    for (int k = 0; k < row.size(); k++) {
      Batch batch = row.batch(k);
      if (row.runs(k) || k < row.front) {
        running.add(batch);
        continue;
      }
      for (Load load : batch.loads) {
        for (int lot : load.lots) {
          lost.add(plan.floor.lots[lot].lot.id());
        }
      }
    }
    return running.toArray(Batch[]::new);
  }
}
