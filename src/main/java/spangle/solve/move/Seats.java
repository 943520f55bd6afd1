package spangle.solve.move;

import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;
import spangle.plan.clock.Row;

/**
 * Batches that loads are taken out of and put into within one move, with what another load would
 * cost in each by the times as they stand: the run it adds, and the loads it makes late. An
 * estimate only; the clock has the last word. Scratch; not for two threads.
 */
final class Seats {
  private static final int MOST = 160;

  private final int[] row = new int[MOST];
  private final int[] at = new int[MOST];
  private final int[] start = new int[MOST];
  private final @Nullable Batch[] now = new @Nullable Batch[MOST];
  private final boolean[] changed = new boolean[MOST];
  private final boolean[] comes = new boolean[MOST];
  private int count;
  private final Spots spots = new Spots();

  void clear() {
    count = 0;
  }

  int count() {
    return count;
  }

  /** What is in it now; null where the last load has gone. */
  @Nullable Batch now(int seat) {
    return now[seat];
  }

  /** Takes the batch of that place in; its seat, or -1 where it has no time or there is no room. */
  int add(Row in, int inRow, int place) {
    for (int s = 0; s < count; s++) {
      if (row[s] == inRow && at[s] == place && !comes[s]) {
        return s;
      }
    }
    if (!in.runs(place) || count == MOST) {
      return -1;
    }
    put(inRow, place, in.start(place), in.batch(place), false);
    return count - 1;
  }

  private void put(int inRow, int place, int startMin, Batch batch, boolean isNew) {
    row[count] = inRow;
    at[count] = place;
    start[count] = startMin;
    now[count] = batch;
    changed[count] = isNew;
    comes[count++] = isNew;
  }

  /** The load at that place of its batch goes. */
  void take(int seat, int place) {
    Batch from = now[seat];
    if (from != null) {
      now[seat] = from.loads.length == 1 ? null : from.without(place);
      changed[seat] = true;
    }
  }

  /** The load joins. */
  void join(int seat, Load load) {
    Batch to = now[seat];
    if (to != null) {
      now[seat] = to.with(load);
      changed[seat] = true;
    }
  }

  /** What it would cost there; {@link Long#MAX_VALUE} where the batch does not take it. */
  long cost(Desk desk, int seat, Load load) {
    Batch batch = now[seat];
    MachineFacts machine = desk.machine(row[seat]);
    if (batch == null || !batch.takes(load, machine)) {
      return Long.MAX_VALUE;
    }
    int longer = Math.max(0, load.dwellMin[batch.setting] - batch.dwell);
    int later = Math.max(0, load.ready + load.travel() - start[seat]);
    int was = start[seat] + batch.dwell;
    int end = was + longer + later;
    long cost = (long) desk.floor.goals.runMinute() * (longer + later);
    if (was <= batch.due && end > batch.due) {
      cost += desk.floor.goals.lateLot();
    }
    return cost + lateness(desk, load, end);
  }

  private static long lateness(Desk desk, Load load, int end) {
    return end + load.behind() > load.due ? (long) desk.floor.goals.lateLot() * load.weight : 0;
  }

  /** What a batch of its own right behind that one would cost, set up before it. */
  long costBehind(Desk desk, int seat, Load load, int setting) {
    if (comes[seat] || (load.machines >>> row[seat] & 1) == 0) {
      return Long.MAX_VALUE;
    }
    Batch before = now[seat];
    int begin = Math.max(load.ready + load.travel(), end(seat));
    long cost = (long) desk.floor.goals.runMinute() * load.dwellMin[setting];
    if (before != null) {
      cost +=
          (long) desk.floor.goals.settingCost() * desk.facts.settingCost[before.setting][setting];
    }
    return cost + lateness(desk, load, begin + load.dwellMin[setting]);
  }

  private int end(int seat) {
    Batch batch = now[seat];
    return start[seat] + (batch == null ? 0 : batch.dwell);
  }

  /** A batch of its own in an emptied seat or behind it; false where the machine will not do. */
  boolean open(Desk desk, int seat, Load load, int setting) {
    Batch own = Batch.of(setting, load);
    if (count == MOST || !own.mayRunOn(desk.machine(row[seat]))) {
      return false;
    }
    if (now[seat] == null) {
      now[seat] = own;
      changed[seat] = true;
    } else {
      put(row[seat], at[seat] + 1, Math.max(load.ready, end(seat)), own, true);
    }
    return true;
  }

  /** Writes what has changed. */
  void write(Desk desk) {
    spots.clear();
    for (int s = 0; s < count; s++) {
      @Nullable Batch batch = now[s];
      if (!changed[s]) {
        continue;
      }
      if (!comes[s]) {
        spots.put(row[s], at[s], batch);
      } else if (batch != null) {
        spots.insert(row[s], at[s], batch);
      }
    }
    spots.write(desk);
  }
}
