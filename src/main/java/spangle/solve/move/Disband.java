package spangle.solve.move;

import org.jspecify.annotations.Nullable;
import spangle.plan.Goals;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.Row;

/**
 * Empties one batch: each of its loads goes to the batch, among some that run anyway, where it
 * costs least. Taken one by one they would pay nothing until the last has gone. Scratch; not for
 * two threads.
 */
final class Disband {
  private static final int MOST = 12;
  private static final int TRIES = 16;

  private final Spots spots = new Spots();

  /** Makes the move. */
  boolean make(Desk desk) {
    desk.anyBatch();
    Batch batch = desk.batch();
    int n = batch.loads.length;
    if (n > MOST) {
      return false;
    }
    int row = desk.row;
    int at = desk.at;
    int minute = Math.max(0, desk.rowAt(row).start(at));
    spots.clear();
    spots.put(row, at, null);
    int first = desk.dice.below(n);
    for (int k = 0; k < n; k++) {
      if (!send(desk, batch.loads[first + k < n ? first + k : first + k - n], minute)) {
        return false;
      }
    }
    spots.write(desk);
    return true;
  }

  private boolean send(Desk desk, Load load, int minute) {
    Goals goals = desk.floor.goals;
    int bestRow = -1;
    int bestAt = -1;
    @Nullable Batch best = null;
    long least = Long.MAX_VALUE;
    for (int k = 0; k < TRIES && least > 0; k++) {
      if (!desk.anyRow(load.machines) || !desk.batchNear(desk.wish(load, minute))) {
        continue;
      }
      int s = spots.find(desk.row, desk.at);
      Batch there = s < 0 ? desk.batch() : spots.now(s);
      if (there == null || !there.takes(load, desk.machine(desk.row))) {
        continue;
      }
      long cost = cost(goals, desk.rowAt(desk.row), desk.at, there, load);
      if (cost < least) {
        least = cost;
        best = there;
        bestRow = desk.row;
        bestAt = desk.at;
      }
    }
    if (best == null) {
      return false;
    }
    spots.put(bestRow, bestAt, best.with(load));
    return true;
  }

  /** What the load costs there, as far as one batch tells. */
  private static long cost(Goals goals, Row row, int at, Batch there, Load load) {
    int longer = Math.max(0, load.dwellMin[there.setting] - there.dwell);
    int delay = Math.max(0, load.ready - row.start(at));
    int end = row.start(at) + delay + there.dwell + longer;
    long late = end > load.due ? goals.lateLot() + (long) goals.lateMinute() * (end - load.due) : 0;
    return (long) goals.runMinute() * longer + late + delay;
  }
}
