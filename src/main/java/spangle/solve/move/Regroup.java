package spangle.solve.move;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;
import spangle.plan.clock.Row;

/**
 * Takes a few whole batches out and batches their loads anew on machines drawn by chance: the load
 * that needs longest opens a batch, and those that need less fill it up. Small batches of several
 * machines become one large one that way, which no change of single loads finds. Scratch; not for
 * two threads.
 */
final class Regroup {
  private static final int MOST = 5;
  private static final int TRIES = 10;

  private final Spots spots = new Spots();
  private final Filling filling = new Filling();
  private final int[] oldRow = new int[MOST];
  private final int[] oldAt = new int[MOST];
  private final Batch[] old = new Batch[MOST];
  private final boolean[] taken = new boolean[MOST];
  private int count;
  private Load[] left = new Load[64];
  private long[] order = new long[64];

  /** Makes the move. */
  boolean make(Desk desk) {
    desk.anyBatch();
    count = 0;
    Batch one = desk.batch();
    int minute = desk.rowAt(desk.row).start(desk.at);
    add(desk);
    int wanted = 2 + desk.dice.below(MOST - 1);
    for (int k = 0; k < TRIES && count < wanted; k++) {
      Load load = one.loads[desk.dice.below(one.loads.length)];
      desk.row = desk.dice.below(desk.line.size());
      if (!desk.batchNear(desk.wish(load, minute))) {
        continue;
      }
      Batch other = desk.batch();
      if (other.group == one.group && other.setting == one.setting && !chosen(other)) {
        add(desk);
      }
    }
    return count > 1 && regroup(desk, one.setting, minute);
  }

  private void add(Desk desk) {
    oldRow[count] = desk.row;
    oldAt[count] = desk.at;
    taken[count] = false;
    old[count++] = desk.batch();
  }

  private boolean chosen(Batch batch) {
    for (int k = 0; k < count; k++) {
      if (old[k] == batch) {
        return true;
      }
    }
    return false;
  }

  private boolean regroup(Desk desk, int setting, int minute) {
    int loads = longestFirst(desk, setting);
    spots.clear();
    for (int k = 0; k < count; k++) {
      spots.put(oldRow[k], oldAt[k], null);
    }
    int made = 0;
    while (loads > 0) {
      if (made++ == count) {
        return false;
      }
      Load seed = left[0];
      if (!desk.anyRow(seed.machines)) {
        return false;
      }
      int row = desk.row;
      MachineFacts machine = desk.machine(row);
      @Nullable Batch batch = fill(setting, machine, loads);
      if (batch == null) {
        return false;
      }
      loads -= batch.loads.length;
      place(desk, row, batch, minute);
    }
    spots.write(desk);
    return true;
  }

  /** All loads, longest need first, equal ones by chance. */
  private int longestFirst(Desk desk, int setting) {
    int loads = 0;
    for (int k = 0; k < count; k++) {
      loads += old[k].loads.length;
    }
    if (order.length < loads) {
      order = new long[2 * loads];
      left = new Load[2 * loads];
    }
    Load[] all = new Load[loads];
    int n = 0;
    for (int k = 0; k < count; k++) {
      for (Load load : old[k].loads) {
        order[n] = ((long) -load.dwellMin[setting] << 32) | (desk.dice.next() & 0x7FFF0000L) | n;
        all[n++] = load;
      }
    }
    Arrays.sort(order, 0, loads);
    for (int k = 0; k < loads; k++) {
      left[k] = all[(int) (order[k] & 0xFFFF)];
    }
    return loads;
  }

  /** A batch of the loads that are left as far as they fit; the first of them must. */
  private @Nullable Batch fill(int setting, MachineFacts machine, int loads) {
    filling.begin(machine, setting, loads);
    int stay = 0;
    for (int k = 0; k < loads; k++) {
      if (!filling.take(left[k])) {
        if (k == 0) {
          return null;
        }
        left[stay++] = left[k];
      }
    }
    return filling.made();
  }

  /** In place of a batch taken out of that row, or at a gap. */
  private void place(Desk desk, int row, Batch batch, int minute) {
    for (int k = 0; k < count; k++) {
      if (!taken[k] && oldRow[k] == row) {
        taken[k] = true;
        spots.put(row, oldAt[k], batch);
        return;
      }
    }
    Row in = desk.rowAt(row);
    desk.row = row;
    desk.gapNear(desk.wish(batch.loads[0], minute));
    spots.insert(row, Math.min(in.size(), desk.at), batch);
  }
}
