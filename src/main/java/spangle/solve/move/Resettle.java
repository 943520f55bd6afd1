package spangle.solve.move;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.Row;

/**
 * Takes loads out around a minute, and late ones from behind it that could be there, and gives each
 * the seat that costs least: those in time make room for others in one stroke (after Schrimpf,
 * Schneider, Stamm-Wilbrandt and Dueck, 2000; leaving some seats unseen after Christiaens and
 * Vanden Berghe, 2020). Scratch; not for two threads.
 */
final class Resettle {
  /** Batches either side of the minute in each row. */
  private static final int REACH = 2;

  /** Batches anywhere that also take loads. */
  private static final int HOMES = 8;

  /** Most draws of loads taken out around the minute, and of late ones behind it. */
  private static final int DRAWS = 8;

  private static final int LATE_DRAWS = 12;

  /** Most loads out at once. */
  private static final int MOST = 64;

  /** So many of a hundred draws empty a batch that holds no more than {@link #SMALL} loads. */
  private static final int WHOLE = 20;

  private static final int SMALL = 6;

  /** So many of a hundred seats go unseen, and gaps: what is best by estimate is not always. */
  private static final int UNSEEN = 8;

  private static final int UNSEEN_GAPS = 50;

  private final Seats seats = new Seats();
  private final Load[] out = new Load[MOST];
  private final long[] order = new long[MOST];
  private int taken;

  /** Makes the move. */
  boolean make(Desk desk) {
    desk.anyBatch();
    Batch batch = desk.batch();
    int minute = Math.max(0, desk.rowAt(desk.row).start(desk.at));
    if (desk.dice.percent(50)) {
      minute = desk.wish(batch.loads[desk.dice.below(batch.loads.length)], minute);
    }
    seats.clear();
    taken = 0;
    addAround(desk, minute);
    int around = seats.count();
    if (around < 2) {
      return false;
    }
    for (int k = 0; k < HOMES; k++) {
      desk.anyBatch();
      seats.add(desk.rowAt(desk.row), desk.row, desk.at);
    }
    int draws = 1 + desk.dice.below(DRAWS);
    for (int k = 0; k < draws; k++) {
      takeOut(desk, desk.dice.below(around));
    }
    for (int k = 0; k < LATE_DRAWS; k++) {
      takeLate(desk, minute);
    }
    if (taken < 2) {
      return false;
    }
    sort(desk);
    for (int k = 0; k < taken; k++) {
      if (!settle(desk, out[(int) (order[k] & 0xFF)])) {
        return false;
      }
    }
    seats.write(desk);
    return true;
  }

  private void addAround(Desk desk, int minute) {
    for (int r = 0; r < desk.line.size(); r++) {
      Row in = desk.rowAt(r);
      int middle = in.placeAt(minute);
      int to = Math.min(in.size(), middle + REACH);
      for (int a = Math.max(in.front, middle - REACH); a < to; a++) {
        seats.add(in, r, a);
      }
    }
  }

  private void takeOut(Desk desk, int seat) {
    @Nullable Batch from = seats.now(seat);
    if (from == null) {
      return;
    }
    int loads = from.loads.length;
    boolean whole = loads <= SMALL && desk.dice.percent(WHOLE);
    int first = whole ? loads - 1 : desk.dice.below(loads);
    int last = whole ? 0 : first;
    for (int place = first; place >= last && taken < MOST; place--) {
      out[taken++] = from.loads[place];
      seats.take(seat, place);
    }
  }

  /** A late load of a later batch that could be in time around that minute. */
  private void takeLate(Desk desk, int minute) {
    int r = desk.dice.below(desk.line.size());
    Row in = desk.rowAt(r);
    int from = in.placeAt(minute);
    if (from >= in.size() || taken == MOST) {
      return;
    }
    int a = from + desk.dice.below(in.size() - from);
    if (!in.runs(a)) {
      return;
    }
    Batch batch = in.batch(a);
    Load load = batch.loads[desk.dice.below(batch.loads.length)];
    if (load.due >= in.end(a) + load.behind()
        || load.due < minute
        || load.ready > minute + 2 * batch.dwell) {
      return;
    }
    int seat = seats.add(in, r, a);
    @Nullable Batch left = seat < 0 ? null : seats.now(seat);
    int place = left == null ? -1 : left.placeOf(load);
    if (place >= 0) {
      out[taken++] = load;
      seats.take(seat, place);
    }
  }

  /** Largest, most urgent or longest first, or by chance. */
  private void sort(Desk desk) {
    int by = desk.dice.below(4);
    for (int k = 0; k < taken; k++) {
      Load load = out[k];
      long first =
          switch (by) {
            case 0 -> -load.units;
            case 1 -> load.due;
            case 2 -> -load.dwellMin[Math.max(0, desk.setting(load))];
            default -> 0;
          };
      order[k] = (first << 24) | (desk.dice.next() & 0xFFFF00L) | k;
    }
    Arrays.sort(order, 0, taken);
  }

  private boolean settle(Desk desk, Load load) {
    int best = -1;
    long least = Long.MAX_VALUE;
    for (int s = 0; s < seats.count(); s++) {
      long cost = seats.cost(desk, s, load);
      if (cost < least && !desk.dice.percent(UNSEEN)) {
        least = cost;
        best = s;
      }
    }
    int setting = least == 0 ? -1 : desk.setting(load);
    int gap = setting < 0 ? -1 : cheapestGap(desk, load, setting, least);
    if (gap >= 0 && seats.open(desk, gap, load, setting)) {
      return true;
    }
    if (best >= 0) {
      seats.join(best, load);
    }
    return best >= 0;
  }

  /** A seat behind which a batch of its own costs less than that; -1 where there is none. */
  private int cheapestGap(Desk desk, Load load, int setting, long most) {
    int best = -1;
    long least = most;
    for (int s = 0; s < seats.count(); s++) {
      long cost = seats.costBehind(desk, s, load, setting);
      if (cost < least && !desk.dice.percent(UNSEEN_GAPS)) {
        least = cost;
        best = s;
      }
    }
    return best;
  }
}
