package spangle.solve.move;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;

/** Moves of single lots between loads; only lots of one finish share a load. */
final class LotMoves {
  private static final int TRIES = 12;

  private LotMoves() {}

  /** A lot hangs on another load of its finish. */
  static boolean intoAnother(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch from = desk.batch();
    int i = desk.dice.below(from.loads.length);
    Load source = from.loads[i];
    if (source.alone) {
      return false;
    }
    boolean whole = source.lots.length == 1 || desk.dice.percent(20);
    int[] lots = whole ? source.lots : new int[] {source.lots[desk.dice.below(source.lots.length)]};
    Optional<Load> rest = whole ? Optional.empty() : desk.hanging.leave(source, lots[0]);
    if (!whole && rest.isEmpty()) {
      return false;
    }
    int now = desk.rowAt(row).start(at);
    for (int k = 0; k < TRIES; k++) {
      if (!desk.anyRow(source.machines) || !desk.batchNear(desk.wish(source, now))) {
        continue;
      }
      int j = withFinish(desk, source, desk.batch());
      if (j < 0) {
        continue;
      }
      Optional<Load> joined = desk.hanging.join(desk.batch().loads[j], lots);
      if (joined.isEmpty()) {
        continue;
      }
      if (desk.batch() == from) {
        return within(desk, from, i, rest.orElse(null), j, joined.get());
      }
      Batch to = desk.batch().replacing(j, joined.get());
      Batch @Nullable [] left = left(from, i, rest.orElse(null), desk.machine(row));
      if (left != null && to.mayRunOn(desk.machine(desk.row))) {
        desk.putTwo(row, at, 1, left, desk.row, desk.at, 1, new Batch[] {to});
        return true;
      }
    }
    return false;
  }

  /** Any load of that finish in the batch, but not the load itself; -1 where there is none. */
  private static int withFinish(Desk desk, Load source, Batch in) {
    int n = in.loads.length;
    int first = desk.dice.below(n);
    for (int k = 0; k < n; k++) {
      int j = (first + k) % n;
      Load load = in.loads[j];
      if (load != source && load.finish == source.finish && !load.alone) {
        return j;
      }
    }
    return -1;
  }

  private static boolean within(
      Desk desk, Batch batch, int i, @Nullable Load rest, int j, Load joined) {
    Batch changed = batch.replacing(j, joined);
    changed = rest == null ? changed.without(i) : changed.replacing(i, rest);
    if (!changed.mayRunOn(desk.machine(desk.row))) {
      return false;
    }
    desk.edit.put(desk.row, desk.at, 1, changed);
    return true;
  }

  private static Batch @Nullable [] left(
      Batch from, int i, @Nullable Load rest, MachineFacts machine) {
    if (rest == null) {
      return LoadMoves.rest(from, i);
    }
    Batch left = from.replacing(i, rest);
    return left.mayRunOn(machine) ? new Batch[] {left} : null;
  }

  /** A lot gets a carrier of its own, in another batch or a new one. */
  static boolean intoNew(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch from = desk.batch();
    int i = desk.dice.below(from.loads.length);
    Load source = from.loads[i];
    if (source.lots.length < 2) {
      return false;
    }
    int lot = source.lots[desk.dice.below(source.lots.length)];
    Optional<Load> rest = desk.hanging.leave(source, lot);
    if (rest.isEmpty()) {
      return false;
    }
    Batch @Nullable [] left = left(from, i, rest.get(), desk.machine(row));
    Load own = desk.floor.single(lot, desk.dice.below(desk.floor.lots[lot].carriers.length));
    if (left == null) {
      return false;
    }
    int now = desk.rowAt(row).start(at);
    if (desk.dice.percent(30)) {
      return newBatch(desk, row, at, left, own, now);
    }
    for (int k = 0; k < TRIES / 2; k++) {
      if (!desk.anyRow(own.machines) || !desk.batchNear(desk.wish(own, now))) {
        continue;
      }
      boolean same = desk.row == row && desk.at == at;
      Batch to = same ? left[0] : desk.batch();
      if (!to.takes(own, desk.machine(desk.row))) {
        continue;
      }
      Batch with = to.with(desk.dice.below(to.loads.length + 1), own);
      if (same) {
        desk.edit.put(row, at, 1, with);
      } else {
        desk.putTwo(row, at, 1, left, desk.row, desk.at, 1, new Batch[] {with});
      }
      return true;
    }
    return false;
  }

  private static boolean newBatch(Desk desk, int row, int at, Batch[] left, Load own, int now) {
    int setting = desk.setting(own);
    if (setting < 0 || !desk.anyRow(own.machines)) {
      return false;
    }
    Batch alone = Batch.of(setting, own);
    if (!alone.mayRunOn(desk.machine(desk.row))) {
      return false;
    }
    desk.gapNear(desk.wish(own, now));
    desk.putTwo(row, at, 1, left, desk.row, desk.at, 0, new Batch[] {alone});
    return true;
  }

  /** Two lots of one finish change carriers. */
  static boolean swap(Desk desk) {
    desk.anyBatch();
    int row = desk.row;
    int at = desk.at;
    Batch one = desk.batch();
    int i = desk.dice.below(one.loads.length);
    Load mine = one.loads[i];
    if (mine.alone) {
      return false;
    }
    int now = desk.rowAt(row).start(at);
    for (int k = 0; k < TRIES; k++) {
      if (!desk.anyRow(mine.machines) || !desk.batchNear(desk.wish(mine, now))) {
        continue;
      }
      Batch two = desk.batch();
      int j = two == one ? -1 : withFinish(desk, mine, two);
      if (j >= 0) {
        return swap(desk, row, at, i, j);
      }
    }
    return false;
  }

  private static boolean swap(Desk desk, int row, int at, int i, int j) {
    Batch one = desk.rowAt(row).batch(at);
    Batch two = desk.batch();
    Load mine = one.loads[i];
    Load theirs = two.loads[j];
    int a = mine.lots[desk.dice.below(mine.lots.length)];
    int b = theirs.lots[desk.dice.below(theirs.lots.length)];
    Optional<Load> first = desk.hanging.load(mine.carrier, exchanged(mine.lots, a, b));
    Optional<Load> second = desk.hanging.load(theirs.carrier, exchanged(theirs.lots, b, a));
    if (first.isEmpty() || second.isEmpty()) {
      return false;
    }
    Batch changedOne = one.replacing(i, first.get());
    Batch changedTwo = two.replacing(j, second.get());
    if (!changedOne.mayRunOn(desk.machine(row)) || !changedTwo.mayRunOn(desk.machine(desk.row))) {
      return false;
    }
    desk.putTwo(
        row, at, 1, new Batch[] {changedOne}, desk.row, desk.at, 1, new Batch[] {changedTwo});
    return true;
  }

  private static int[] exchanged(int[] lots, int out, int in) {
    int[] changed = lots.clone();
    for (int k = 0; k < changed.length; k++) {
      if (changed[k] == out) {
        changed[k] = in;
      }
    }
    return changed;
  }
}
