package spangle.solve.move;

import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;

/**
 * Shortens one batch: the loads that keep it longest go to batches that last as long anyway, each
 * where there is room or for a load that needs less. Scratch; not for two threads.
 */
final class Peel {
  private static final int MOST = 12;
  private static final int TRIES = 24;

  private final Spots spots = new Spots();

  /** The batch that is shortened, as it stands so far, and its place; set first in every move. */
  @SuppressWarnings("NullAway.Init")
  private Batch mine;

  private int row;
  private int at;

  /** Makes the move. */
  boolean make(Desk desk) {
    desk.anyBatch();
    Batch batch = desk.batch();
    int setting = batch.setting;
    int top = 0;
    int below = 0;
    int tops = 0;
    for (Load load : batch.loads) {
      int min = load.dwellMin[setting];
      if (min > top) {
        below = top;
        top = min;
        tops = 1;
      } else if (min == top) {
        tops++;
      } else {
        below = Math.max(below, min);
      }
    }
    if (below == 0 || tops > MOST) {
      return false;
    }
    int minute = desk.rowAt(desk.row).start(desk.at);
    mine = batch;
    row = desk.row;
    at = desk.at;
    spots.clear();
    spots.put(row, at, batch);
    for (Load load : batch.loads) {
      if (load.dwellMin[setting] == top && !send(desk, load, below, minute)) {
        return false;
      }
    }
    spots.put(row, at, mine);
    spots.write(desk);
    return true;
  }

  /** Finds a batch for one of the loads. */
  private boolean send(Desk desk, Load load, int below, int minute) {
    for (int k = 0; k < TRIES; k++) {
      if (!desk.anyRow(load.machines) || !desk.batchNear(desk.wish(load, minute))) {
        continue;
      }
      Batch there = desk.batch();
      int min = load.dwellMin[there.setting];
      if (min < 0
          || there.dwell < min
          || there.group != load.group
          || (desk.row == row && desk.at == at)) {
        continue;
      }
      int s = spots.find(desk.row, desk.at);
      @Nullable Batch changed = s < 0 ? there : spots.now(s);
      if (changed == null) {
        continue;
      }
      if (changed.takes(load, desk.machine(desk.row)) && mine.loads.length > 1) {
        spots.put(desk.row, desk.at, changed.with(load));
        mine = mine.without(mine.placeOf(load));
        return true;
      }
      if (change(desk, changed, load, below)) {
        return true;
      }
    }
    return false;
  }

  /** Changes the load for one that needs less. */
  private boolean change(Desk desk, Batch there, Load load, int below) {
    MachineFacts machine = desk.machine(desk.row);
    MachineFacts own = desk.machine(row);
    int room = machine.spec.capacityUnits() - there.units;
    int ownRoom = own.spec.capacityUnits() - mine.units;
    int n = there.loads.length;
    int begin = desk.dice.below(n);
    for (int k = 0; k < n; k++) {
      int j = begin + k < n ? begin + k : begin + k - n;
      Load back = there.loads[j];
      int min = back.dwellMin[mine.setting];
      if (min < 0
          || min > below
          || load.units - back.units > room
          || back.units - load.units > ownRoom
          || (back.machines >>> own.index & 1) == 0) {
        continue;
      }
      Batch other = there.replacing(j, load);
      Batch left = mine.replacing(mine.placeOf(load), back);
      if (other.mayRunOn(machine) && left.mayRunOn(own)) {
        spots.put(desk.row, desk.at, other);
        mine = left;
        return true;
      }
    }
    return false;
  }
}
