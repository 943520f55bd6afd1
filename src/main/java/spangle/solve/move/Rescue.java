package spangle.solve.move;

import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;
import spangle.plan.clock.Row;

/**
 * Fills a batch, a new one or one that runs anyway, with loads that are late where they are and
 * would be in time in it. One alone seldom pays for a batch; several do. Scratch; not for two
 * threads.
 */
final class Rescue {
  private static final int TRIES = 8;
  private static final int REACH = 48;
  private static final int MOST = 8;

  private final Spots spots = new Spots();
  private int found;
  private final int[] lateRow = new int[256];
  private final int[] lateAt = new int[256];
  private final Load[] late = new Load[256];

  /** A new batch around a late load. */
  boolean open(Desk desk) {
    for (int k = 0; k < TRIES; k++) {
      desk.anyBatch();
      Batch batch = desk.batch();
      Load load = batch.loads[desk.dice.below(batch.loads.length)];
      int start = desk.rowAt(desk.row).start(desk.at);
      if (start >= 0 && start + batch.dwell > load.due) {
        return open(desk, load);
      }
    }
    return false;
  }

  private boolean open(Desk desk, Load seed) {
    int row = desk.row;
    int at = desk.at;
    Batch from = desk.batch();
    int setting = desk.setting(seed);
    int spare = setting < 0 ? -1 : seed.due - seed.ready - seed.dwellMin[setting];
    if (spare < 0 || !desk.anyRow(seed.machines)) {
      return false;
    }
    Batch own = Batch.of(setting, seed);
    MachineFacts machine = desk.machine(desk.row);
    if (!own.mayRunOn(machine)) {
      return false;
    }
    int wish = seed.ready + desk.dice.below(spare + 1);
    Row in = desk.rowAt(desk.row);
    int gap = in.placeAt(wish);
    int start = seed.ready;
    if (gap > in.front && in.runs(gap - 1)) {
      start = Math.max(start, in.end(gap - 1));
    }
    if (start + own.dwell > seed.due) {
      return false;
    }
    int gapRow = desk.row;
    spots.clear();
    spots.put(row, at, from.loads.length == 1 ? null : from.without(from.placeOf(seed)));
    gather(desk, start, start + own.dwell, setting, machine, -1, -1);
    @Nullable Batch grown = fill(desk, own, machine, start);
    spots.insert(gapRow, gap, grown == null ? own : grown);
    spots.write(desk);
    return true;
  }

  /** Late loads join a batch that runs anyway. */
  boolean join(Desk desk) {
    desk.anyBatch();
    Batch batch = desk.batch();
    int row = desk.row;
    int at = desk.at;
    int start = desk.rowAt(row).start(at);
    if (start < 0) {
      return false;
    }
    MachineFacts machine = desk.machine(row);
    spots.clear();
    gather(desk, start, start + batch.dwell, batch.setting, machine, row, at);
    @Nullable Batch grown = fill(desk, batch, machine, start);
    if (grown == null) {
      return false;
    }
    spots.put(row, at, grown);
    spots.write(desk);
    return true;
  }

  /** Looks for loads that are late and would be in time between those minutes. */
  private void gather(
      Desk desk, int start, int end, int setting, MachineFacts machine, int notRow, int notAt) {
    found = 0;
    for (int r = 0; r < desk.line.size(); r++) {
      Row row = desk.rowAt(r);
      int from = row.placeAt(start);
      int to = Math.min(row.size(), from + REACH);
      for (int a = from; a < to; a++) {
        if (!row.runs(a) || (r == notRow && a == notAt)) {
          continue;
        }
        Batch batch = row.batch(a);
        int done = row.end(a);
        if (done <= batch.due) {
          continue;
        }
        for (Load load : batch.loads) {
          if (done > load.due
              && load.due >= end
              && load.ready <= start
              && load.dwellMin[setting] >= 0
              && (load.machines >>> machine.index & 1) != 0
              && found < late.length) {
            lateRow[found] = r;
            lateAt[found] = a;
            late[found++] = load;
          }
        }
      }
    }
  }

  /** Puts them in as far as there is room; null where none went in. */
  private @Nullable Batch fill(Desk desk, Batch own, MachineFacts machine, int start) {
    Batch grown = own;
    int wanted = 1 + desk.dice.below(MOST);
    int in = 0;
    for (int left = found; left > 0 && in < wanted; left--) {
      int k = desk.dice.below(left);
      Load load = late[k];
      int row = lateRow[k];
      int at = lateAt[k];
      late[k] = late[left - 1];
      lateRow[k] = lateRow[left - 1];
      lateAt[k] = lateAt[left - 1];
      int s = spots.find(row, at);
      Batch from = s < 0 ? desk.rowAt(row).batch(at) : spots.now(s);
      int min = load.dwellMin[grown.setting];
      if (from == null
          || from.placeOf(load) < 0
          || min > grown.dwell
          || start + grown.dwell > load.due
          || !grown.takes(load, machine)) {
        continue;
      }
      spots.put(row, at, from.loads.length == 1 ? null : from.without(from.placeOf(load)));
      grown = grown.with(load);
      in++;
    }
    return in == 0 ? null : grown;
  }
}
