package spangle.solve.move;

import java.util.Arrays;
import java.util.Comparator;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;
import spangle.plan.clock.Row;

/** Moves of whole batches. */
final class BatchMoves {
  private static final int TRIES = 6;

  private BatchMoves() {}

  /** A batch goes to another place, on its machine or another. */
  static boolean elsewhere(Desk desk) {
    desk.anyBatch();
    return elsewhere(desk, desk.row, desk.at);
  }

  static boolean elsewhere(Desk desk, int row, int at) {
    Batch batch = desk.rowAt(row).batch(at);
    int now = desk.rowAt(row).start(at);
    if (!desk.anyRow(batch.machines) || !batch.mayRunOn(desk.machine(desk.row))) {
      return false;
    }
    Load load = batch.loads[desk.dice.below(batch.loads.length)];
    desk.gapNear(desk.wish(load, now));
    if (desk.row == row && (desk.at == at || desk.at == at + 1)) {
      return false;
    }
    desk.putTwo(row, at, 1, Move.NOTHING, desk.row, desk.at, 0, new Batch[] {batch});
    return true;
  }

  /** Two batches change places. */
  static boolean swap(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch one = desk.batch();
    for (int k = 0; k < TRIES; k++) {
      if (!desk.anyRow(one.machines)
          || !desk.batchNear(desk.wish(one.loads[0], desk.rowAt(row).start(at)))) {
        continue;
      }
      Batch two = desk.batch();
      if (two != one && one.mayRunOn(desk.machine(desk.row)) && two.mayRunOn(desk.machine(row))) {
        desk.putTwo(row, at, 1, new Batch[] {two}, desk.row, desk.at, 1, new Batch[] {one});
        return true;
      }
    }
    return false;
  }

  /** All loads of one batch join another. */
  static boolean merge(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch one = desk.batch();
    for (int k = 0; k < TRIES; k++) {
      Load load = one.loads[desk.dice.below(one.loads.length)];
      if (!desk.anyRow(one.machines)
          || !desk.batchNear(desk.wish(load, desk.rowAt(row).start(at)))) {
        continue;
      }
      Batch two = desk.batch();
      MachineFacts machine = desk.machine(desk.row);
      if (two == one
          || two.group != one.group
          || one.units + two.units > machine.spec.capacityUnits()
          || load.dwellMin[two.setting] < 0) {
        continue;
      }
      Load[] all = Arrays.copyOf(two.loads, two.loads.length + one.loads.length);
      System.arraycopy(one.loads, 0, all, two.loads.length, one.loads.length);
      Batch both = Batch.of(two.setting, all);
      if (both.mayRunOn(machine)) {
        desk.putTwo(row, at, 1, Move.NOTHING, desk.row, desk.at, 1, new Batch[] {both});
        return true;
      }
    }
    return false;
  }

  /** A batch is parted by what its loads need or when they are due. */
  static boolean split(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch batch = desk.batch();
    int n = batch.loads.length;
    if (n < 2) {
      return false;
    }
    Load[] sorted = batch.loads.clone();
    int by = desk.dice.below(3);
    int setting = batch.setting;
    Arrays.sort(
        sorted,
        by == 0
            ? Comparator.comparingInt((Load l) -> l.dwellMin[setting])
            : by == 1
                ? Comparator.comparingInt((Load l) -> l.due)
                : Comparator.comparingInt((Load l) -> l.ready));
    int cut = 1 + desk.dice.below(n - 1);
    Batch first = Batch.of(setting, Arrays.copyOfRange(sorted, 0, cut));
    Batch second = Batch.of(setting, Arrays.copyOfRange(sorted, cut, n));
    int draw = desk.dice.below(3);
    if (draw == 0) {
      desk.edit.put(row, at, 1, first, second);
      return true;
    }
    Batch stays = draw == 1 ? first : second;
    Batch goes = draw == 1 ? second : first;
    if (!desk.anyRow(goes.machines) || !goes.mayRunOn(desk.machine(desk.row))) {
      return false;
    }
    desk.gapNear(desk.wish(goes.loads[0], desk.rowAt(row).start(at)));
    desk.putTwo(row, at, 1, new Batch[] {stays}, desk.row, desk.at, 0, new Batch[] {goes});
    return true;
  }

  /** A run of batches is turned round, or goes elsewhere. */
  static boolean run(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Row in = desk.rowAt(row);
    int length = Math.min(2 + desk.dice.below(5), in.size() - at);
    if (length < 2) {
      return false;
    }
    Batch[] run = new Batch[length];
    if (desk.dice.percent(50)) {
      for (int k = 0; k < length; k++) {
        run[k] = in.batch(at + length - 1 - k);
      }
      desk.edit.put(row, at, length, run);
      return true;
    }
    long machines = -1L;
    for (int k = 0; k < length; k++) {
      run[k] = in.batch(at + k);
      machines &= run[k].machines;
    }
    if (!desk.anyRow(machines)) {
      return false;
    }
    for (Batch batch : run) {
      if (!batch.mayRunOn(desk.machine(desk.row))) {
        return false;
      }
    }
    desk.gapNear(desk.wish(run[0].loads[0], in.start(at)));
    if (desk.row == row && desk.at >= at && desk.at <= at + length) {
      return false;
    }
    desk.putTwo(row, at, length, Move.NOTHING, desk.row, desk.at, 0, run);
    return true;
  }

  /** A batch runs at another setting. */
  static boolean otherSetting(Desk desk) {
    if (desk.facts.settings < 2) {
      return false;
    }
    desk.anyBatch();
    Batch batch = desk.batch();
    int setting = desk.dice.below(desk.facts.settings);
    if (setting == batch.setting) {
      return false;
    }
    for (Load load : batch.loads) {
      if (load.dwellMin[setting] < 0) {
        return false;
      }
    }
    Batch other = batch.at(setting);
    if (!other.mayRunOn(desk.machine(desk.row))) {
      return false;
    }
    desk.edit.put(desk.row, desk.at, 1, other);
    return true;
  }
}
