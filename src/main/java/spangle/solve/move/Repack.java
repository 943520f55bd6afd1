package spangle.solve.move;

import java.util.Arrays;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;

/**
 * Parts the loads of two batches between them anew, in one stroke: by what they need, so that one
 * of the two gets shorter, or by when they are due or ready. Scratch; not for two threads.
 */
final class Repack {
  private static final int TRIES = 8;

  private Load[] all = new Load[64];
  private long[] order = new long[64];
  private final Half first = new Half();
  private final Half second = new Half();

  /** One of the two batches while it fills. */
  private static final class Half {
    private Load[] loads = new Load[64];
    private int count;
    private int units;
    private double grossKg;
    private int shortest;
    private int longest;

    void clear(int most) {
      if (loads.length < most) {
        loads = new Load[2 * most];
      }
      count = 0;
      units = 0;
      grossKg = 0;
      shortest = 0;
      longest = Integer.MAX_VALUE;
    }

    boolean take(Load load, int setting, MachineFacts machine) {
      int min = load.dwellMin[setting];
      if (min < 0
          || units + load.units > machine.spec.capacityUnits()
          || (load.machines >>> machine.index & 1) == 0
          || Math.max(shortest, min) > Math.min(longest, load.dwellMax[setting])
          || grossKg + load.grossKg > machine.spec.maxMassKg()) {
        return false;
      }
      units += load.units;
      grossKg += load.grossKg;
      shortest = Math.max(shortest, min);
      longest = Math.min(longest, load.dwellMax[setting]);
      loads[count++] = load;
      return true;
    }

    Batch[] made(int setting) {
      return count == 0
          ? Move.NOTHING
          : new Batch[] {Batch.of(setting, Arrays.copyOf(loads, count))};
    }
  }

  /** Makes the move. */
  boolean make(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch one = desk.batch();
    int now = desk.rowAt(row).start(at);
    for (int k = 0; k < TRIES; k++) {
      Load load = one.loads[desk.dice.below(one.loads.length)];
      if (!desk.anyRow(load.machines) || !desk.batchNear(desk.wish(load, now))) {
        continue;
      }
      Batch two = desk.batch();
      if (two != one
          && two.group == one.group
          && one.loads.length + two.loads.length > 2
          && load.dwellMin[two.setting] >= 0) {
        return part(desk, row, at);
      }
    }
    return false;
  }

  private boolean part(Desk desk, int row, int at) {
    int otherRow = desk.row;
    int otherAt = desk.at;
    Batch one = desk.rowAt(row).batch(at);
    Batch two = desk.batch();
    sort(desk, one, two);
    boolean oneFirst =
        desk.dice.percent(80)
            ? desk.rowAt(row).start(at) <= desk.rowAt(otherRow).start(otherAt)
            : desk.dice.percent(50);
    int count = one.loads.length + two.loads.length;
    first.clear(count);
    second.clear(count);
    Half ones = oneFirst ? first : second;
    Half twos = oneFirst ? second : first;
    MachineFacts firstMachine = desk.machine(oneFirst ? row : otherRow);
    MachineFacts secondMachine = desk.machine(oneFirst ? otherRow : row);
    int firstSetting = oneFirst ? one.setting : two.setting;
    int secondSetting = oneFirst ? two.setting : one.setting;
    for (int k = 0; k < count; k++) {
      Load load = all[(int) (order[k] & 0xFFFF)];
      if (!first.take(load, firstSetting, firstMachine)
          && !second.take(load, secondSetting, secondMachine)) {
        return false;
      }
    }
    desk.putTwo(row, at, 1, ones.made(one.setting), otherRow, otherAt, 1, twos.made(two.setting));
    return true;
  }

  /** Brings all loads into order; equal ones by chance. */
  private void sort(Desk desk, Batch one, Batch two) {
    int count = one.loads.length + two.loads.length;
    if (all.length < count) {
      all = new Load[2 * count];
      order = new long[2 * count];
    }
    System.arraycopy(one.loads, 0, all, 0, one.loads.length);
    System.arraycopy(two.loads, 0, all, one.loads.length, two.loads.length);
    int by = desk.dice.below(5);
    for (int k = 0; k < count; k++) {
      Load load = all[k];
      int key =
          by < 2
              ? -load.dwellMin[one.setting]
              : by == 2 ? load.dwellMin[one.setting] : by == 3 ? load.due : load.ready;
      order[k] = ((long) key << 32) | (desk.dice.next() & 0x7FFF0000L) | k;
    }
    Arrays.sort(order, 0, count);
  }
}
