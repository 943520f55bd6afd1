package spangle.solve.move;

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

  private final int[] spotRow = new int[MOST + 1];
  private final int[] spotAt = new int[MOST + 1];
  private final Batch[] spotNow = new Batch[MOST + 1];
  private int spots;

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
    spots = 0;
    int minute = desk.rowAt(desk.row).start(desk.at);
    add(desk.row, desk.at, batch);
    for (Load load : batch.loads) {
      if (load.dwellMin[setting] == top && !send(desk, load, below, minute)) {
        return false;
      }
    }
    write(desk);
    return true;
  }

  private void add(int row, int at, Batch batch) {
    spotRow[spots] = row;
    spotAt[spots] = at;
    spotNow[spots] = batch;
    spots++;
  }

  private int spot(int row, int at, Batch batch) {
    for (int s = 0; s < spots; s++) {
      if (spotRow[s] == row && spotAt[s] == at) {
        return s;
      }
    }
    if (spots == spotRow.length) {
      return -1;
    }
    add(row, at, batch);
    return spots - 1;
  }

  /** Finds a batch for one of the loads. */
  private boolean send(Desk desk, Load load, int below, int minute) {
    for (int k = 0; k < TRIES; k++) {
      if (!desk.anyRow(load.machines) || !desk.batchNear(desk.wish(load, minute))) {
        continue;
      }
      Batch there = desk.batch();
      int min = load.dwellMin[there.setting];
      if (min < 0 || there.dwell < min || there.group != load.group) {
        continue;
      }
      int s = spot(desk.row, desk.at, there);
      if (s <= 0) {
        if (s < 0) {
          return false;
        }
        continue;
      }
      Batch now = spotNow[s];
      if (now.takes(load, desk.machine(desk.row)) && spotNow[0].loads.length > 1) {
        spotNow[s] = now.with(load);
        spotNow[0] = spotNow[0].without(place(spotNow[0], load));
        return true;
      }
      if (change(desk, s, load, below)) {
        return true;
      }
    }
    return false;
  }

  /** Changes the load for one that needs less. */
  private boolean change(Desk desk, int s, Load load, int below) {
    Batch now = spotNow[s];
    Batch mine = spotNow[0];
    MachineFacts machine = desk.machine(spotRow[s]);
    MachineFacts own = desk.machine(spotRow[0]);
    int room = machine.spec.capacityUnits() - now.units;
    int ownRoom = own.spec.capacityUnits() - mine.units;
    int n = now.loads.length;
    int begin = desk.dice.below(n);
    for (int k = 0; k < n; k++) {
      int j = begin + k < n ? begin + k : begin + k - n;
      Load back = now.loads[j];
      int min = back.dwellMin[mine.setting];
      if (min < 0
          || min > below
          || load.units - back.units > room
          || back.units - load.units > ownRoom
          || (back.machines >>> own.index & 1) == 0) {
        continue;
      }
      Batch other = now.replacing(j, load);
      Batch left = mine.replacing(place(mine, load), back);
      if (other.mayRunOn(machine) && left.mayRunOn(own)) {
        spotNow[s] = other;
        spotNow[0] = left;
        return true;
      }
    }
    return false;
  }

  private static int place(Batch batch, Load load) {
    for (int k = 0; k < batch.loads.length; k++) {
      if (batch.loads[k] == load) {
        return k;
      }
    }
    throw new IllegalStateException("the load has left the batch");
  }

  /** Writes the changed batches in the order of their places. */
  private void write(Desk desk) {
    for (int k = 1; k < spots; k++) {
      for (int s = k; s > 0 && before(s, s - 1); s--) {
        swap(s, s - 1);
      }
    }
    for (int s = 0; s < spots; s++) {
      desk.edit.put(spotRow[s], spotAt[s], 1, spotNow[s]);
    }
  }

  private boolean before(int a, int b) {
    return spotRow[a] < spotRow[b] || (spotRow[a] == spotRow[b] && spotAt[a] < spotAt[b]);
  }

  private void swap(int a, int b) {
    int row = spotRow[a];
    spotRow[a] = spotRow[b];
    spotRow[b] = row;
    int at = spotAt[a];
    spotAt[a] = spotAt[b];
    spotAt[b] = at;
    Batch now = spotNow[a];
    spotNow[a] = spotNow[b];
    spotNow[b] = now;
  }
}
