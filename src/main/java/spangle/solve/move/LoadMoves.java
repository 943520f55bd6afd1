package spangle.solve.move;

import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;

/** Moves of single loads. */
final class LoadMoves {
  private static final int TRIES = 8;

  private LoadMoves() {}

  /** A load goes into another batch that takes it. */
  static boolean intoAnother(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch from = desk.batch();
    int i = desk.dice.below(from.loads.length);
    Load load = from.loads[i];
    int now = desk.rowAt(row).start(at);
    for (int k = 0; k < TRIES; k++) {
      if (!desk.anyRow(load.machines) || !desk.batchNear(desk.wish(load, now))) {
        continue;
      }
      Batch to = desk.batch();
      if (to != from && to.takes(load, desk.machine(desk.row))) {
        desk.putTwo(row, at, 1, rest(from, i), desk.row, desk.at, 1, new Batch[] {to.with(load)});
        return true;
      }
    }
    return false;
  }

  /** A load gets a batch of its own. */
  static boolean intoNew(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch from = desk.batch();
    if (from.loads.length == 1) {
      return BatchMoves.elsewhere(desk, row, at);
    }
    int i = desk.dice.below(from.loads.length);
    Load load = from.loads[i];
    int now = desk.rowAt(row).start(at);
    int setting = desk.setting(load);
    if (setting < 0 || !desk.anyRow(load.machines)) {
      return false;
    }
    Batch alone = Batch.of(setting, load);
    if (!alone.mayRunOn(desk.machine(desk.row))) {
      return false;
    }
    desk.gapNear(desk.wish(load, now));
    desk.putTwo(row, at, 1, rest(from, i), desk.row, desk.at, 0, new Batch[] {alone});
    return true;
  }

  /** Two loads of different batches change places. */
  static boolean swap(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch one = desk.batch();
    int i = desk.dice.below(one.loads.length);
    Load mine = one.loads[i];
    int now = desk.rowAt(row).start(at);
    for (int k = 0; k < TRIES; k++) {
      if (!desk.anyRow(mine.machines) || !desk.batchNear(desk.wish(mine, now))) {
        continue;
      }
      Batch two = desk.batch();
      if (two == one) {
        continue;
      }
      int j = desk.dice.below(two.loads.length);
      Load theirs = two.loads[j];
      if (!mayTake(one, mine, theirs, desk.machine(row))
          || !mayTake(two, theirs, mine, desk.machine(desk.row))) {
        continue;
      }
      Batch first = one.replacing(i, theirs);
      Batch second = two.replacing(j, mine);
      if (first.mayRunOn(desk.machine(row)) && second.mayRunOn(desk.machine(desk.row))) {
        desk.putTwo(row, at, 1, new Batch[] {first}, desk.row, desk.at, 1, new Batch[] {second});
        return true;
      }
    }
    return false;
  }

  private static boolean mayTake(Batch batch, Load goes, Load comes, MachineFacts machine) {
    return comes.dwellMin[batch.setting] >= 0
        && comes.group == batch.group
        && (comes.machines >>> machine.index & 1) != 0
        && batch.units - goes.units + comes.units <= machine.spec.capacityUnits();
  }

  static Batch[] rest(Batch from, int i) {
    return from.loads.length == 1 ? Move.NOTHING : new Batch[] {from.without(i)};
  }

  /** Two loads of one batch are fed in another order. */
  static boolean reorder(Desk desk) {
    desk.anyBatch();
    Batch batch = desk.batch();
    int n = batch.loads.length;
    if (n < 2) {
      return false;
    }
    Load[] order = batch.loads.clone();
    int from = desk.dice.below(n);
    int to = desk.dice.below(n - 1);
    to += to >= from ? 1 : 0;
    Load moved = order[from];
    if (from < to) {
      System.arraycopy(order, from + 1, order, from, to - from);
    } else {
      System.arraycopy(order, to, order, to + 1, from - to);
    }
    order[to] = moved;
    desk.edit.put(desk.row, desk.at, 1, Batch.of(batch.setting, order));
    return true;
  }

  /** A load hangs on another kind of carrier. */
  static boolean otherCarrier(Desk desk) {
    desk.anyBatch();
    Batch batch = desk.batch();
    int i = desk.dice.below(batch.loads.length);
    Load load = batch.loads[i];
    int[] carriers = desk.floor.lots[load.lots[0]].carriers;
    if (carriers.length < 2) {
      return false;
    }
    int carrier = carriers[desk.dice.below(carriers.length)];
    if (carrier == load.carrier) {
      return false;
    }
    return desk.hanging
        .load(carrier, load.lots)
        .map(other -> batch.replacing(i, other))
        .filter(other -> other.mayRunOn(desk.machine(desk.row)))
        .map(
            other -> {
              desk.edit.put(desk.row, desk.at, 1, other);
              return true;
            })
        .orElse(false);
  }
}
