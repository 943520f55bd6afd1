package spangle.solve.move;

import java.util.Arrays;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;

/**
 * Parts the loads of two to four batches among them anew, in one stroke: by what they need, so that
 * one of them gets shorter, or by when they are due or ready. Scratch; not for two threads.
 */
final class Repack {
  private static final int MOST = 4;
  private static final int TRIES = 8;

  private Load[] all = new Load[64];
  private long[] order = new long[64];
  private final Spots spots = new Spots();
  private final Part[] parts = new Part[MOST];
  private int count;

  /** Makes the move. */
  boolean make(Desk desk) {
    desk.anyBatch();
    count = 0;
    Batch one = desk.batch();
    int now = desk.rowAt(desk.row).start(desk.at);
    int loads = one.loads.length;
    add(desk);
    int draw = desk.dice.below(10);
    int wanted = draw < 6 ? 2 : draw < 9 ? 3 : 4;
    for (int k = 0; k < TRIES && count < wanted; k++) {
      Load load = one.loads[desk.dice.below(one.loads.length)];
      if (!desk.anyRow(load.machines) || !desk.batchNear(desk.wish(load, now))) {
        continue;
      }
      Batch other = desk.batch();
      if (other.group == one.group && load.dwellMin[other.setting] >= 0 && !chosen(other)) {
        loads += other.loads.length;
        add(desk);
      }
    }
    return count > 1 && loads > count && part(desk, loads);
  }

  private void add(Desk desk) {
    if (parts[count] == null) {
      parts[count] = new Part(desk.batch());
    }
    parts[count++].of(desk);
  }

  private boolean chosen(Batch batch) {
    for (int k = 0; k < count; k++) {
      if (parts[k].was == batch) {
        return true;
      }
    }
    return false;
  }

  private boolean part(Desk desk, int loads) {
    sort(desk, loads);
    inOrder(desk);
    for (int k = 0; k < count; k++) {
      Part part = parts[k];
      part.filling.begin(desk.machine(part.row), part.was.setting, loads);
    }
    for (int k = 0; k < loads; k++) {
      Load load = all[(int) (order[k] & 0xFFFF)];
      int p = 0;
      while (p < count && !parts[p].filling.take(load)) {
        p++;
      }
      if (p == count) {
        return false;
      }
    }
    spots.clear();
    for (int k = 0; k < count; k++) {
      Part part = parts[k];
      spots.put(part.row, part.at, part.filling.made());
    }
    spots.write(desk);
    return true;
  }

  /** Which batch is filled first: the earliest, the longest, or any. */
  private void inOrder(Desk desk) {
    int draw = desk.dice.below(10);
    for (int k = 0; k < count; k++) {
      Part part = parts[k];
      part.turn =
          draw < 5
              ? desk.rowAt(part.row).start(part.at)
              : draw < 8 ? -part.was.dwell : desk.dice.below(count);
    }
    for (int k = 1; k < count; k++) {
      for (int p = k; p > 0 && parts[p].turn < parts[p - 1].turn; p--) {
        Part part = parts[p];
        parts[p] = parts[p - 1];
        parts[p - 1] = part;
      }
    }
  }

  /** Brings all loads into order; equal ones by chance. */
  private void sort(Desk desk, int loads) {
    if (all.length < loads) {
      all = new Load[2 * loads];
      order = new long[2 * loads];
    }
    int n = 0;
    for (int k = 0; k < count; k++) {
      Load[] in = parts[k].was.loads;
      System.arraycopy(in, 0, all, n, in.length);
      n += in.length;
    }
    int setting = parts[0].was.setting;
    int by = desk.dice.below(5);
    for (int k = 0; k < loads; k++) {
      Load load = all[k];
      int key =
          by < 2
              ? -load.dwellMin[setting]
              : by == 2 ? load.dwellMin[setting] : by == 3 ? load.due : load.ready;
      order[k] = ((long) key << 32) | (desk.dice.next() & 0x7FFF0000L) | k;
    }
    Arrays.sort(order, 0, loads);
  }

  /** One of the batches while it fills. */
  private static final class Part {
    private Batch was;
    private int row;
    private int at;
    private int turn;
    private final Filling filling = new Filling();

    Part(Batch batch) {
      was = batch;
    }

    void of(Desk desk) {
      was = desk.batch();
      row = desk.row;
      at = desk.at;
    }
  }
}
