package spangle.solve.move;

import java.util.Arrays;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.Row;

/**
 * Takes a few loads out around one batch and puts each back where it lengthens a batch least
 * (Schrimpf, Schneider, Stamm-Wilbrandt and Dueck, 2000: ruin and recreate).
 */
final class Ruin {
  private static final int MOST = 8;
  private static final int REACH = 3;
  private static final int SPOTS = 64;

  private final int[] spotRow = new int[SPOTS];
  private final int[] spotAt = new int[SPOTS];
  private final Batch[][] spotNow = new Batch[SPOTS][];
  private final boolean[] changed = new boolean[SPOTS];
  private int spots;
  private final Load[] out = new Load[MOST];

  /** Makes the move. */
  boolean make(Desk desk) {
    desk.anyBatch();
    int minute = Math.max(0, desk.rowAt(desk.row).start(desk.at));
    gatherSpots(desk, minute);
    if (spots < 2) {
      return false;
    }
    int wanted = 2 + desk.dice.below(MOST - 1);
    int taken = 0;
    for (int k = 0; k < wanted; k++) {
      int s = desk.dice.below(spots);
      if (spotNow[s].length == 0) {
        continue;
      }
      Batch from = spotNow[s][0];
      int i = desk.dice.below(from.loads.length);
      out[taken++] = from.loads[i];
      spotNow[s] = LoadMoves.rest(from, i);
      changed[s] = true;
    }
    if (taken < 2) {
      return false;
    }
    largestFirst(taken);
    for (int k = 0; k < taken; k++) {
      if (!putBack(desk, out[k])) {
        return false;
      }
    }
    write(desk);
    return true;
  }

  /** Sorts the few loads taken out; equal ones stay in order. */
  private void largestFirst(int taken) {
    for (int k = 1; k < taken; k++) {
      Load load = out[k];
      int place = k;
      while (place > 0 && out[place - 1].units < load.units) {
        out[place] = out[place - 1];
        place--;
      }
      out[place] = load;
    }
  }

  private void gatherSpots(Desk desk, int minute) {
    spots = 0;
    int row0 = desk.row;
    int at0 = desk.at;
    for (int r = 0; r < desk.line.size(); r++) {
      Row row = desk.rowAt(r);
      int middle = r == row0 ? at0 : row.placeAt(minute);
      int from = Math.max(row.front, middle - REACH);
      int to = Math.min(row.size(), middle + REACH + 1);
      for (int a = from; a < to && spots < SPOTS; a++) {
        spotRow[spots] = r;
        spotAt[spots] = a;
        spotNow[spots] = new Batch[] {row.batch(a)};
        changed[spots] = false;
        spots++;
      }
    }
  }

  private boolean putBack(Desk desk, Load load) {
    int best = -1;
    int least = Integer.MAX_VALUE;
    int first = desk.dice.below(spots);
    for (int k = 0; k < spots; k++) {
      int s = (first + k) % spots;
      if (spotNow[s].length == 0) {
        continue;
      }
      Batch batch = spotNow[s][0];
      if (!batch.takes(load, desk.machine(spotRow[s])) || desk.dice.percent(15)) {
        continue;
      }
      int longer = Math.max(0, load.dwellMin[batch.setting] - batch.dwell);
      if (longer < least) {
        best = s;
        least = longer;
      }
    }
    int setting = desk.setting(load);
    if (best >= 0 && (setting < 0 || least < load.dwellMin[setting])) {
      spotNow[best][0] = spotNow[best][0].with(load);
      changed[best] = true;
      return true;
    }
    return setting >= 0 && besideOrInstead(desk, Batch.of(setting, load), first);
  }

  private boolean besideOrInstead(Desk desk, Batch own, int first) {
    for (int k = 0; k < spots; k++) {
      int s = (first + k) % spots;
      if (!own.mayRunOn(desk.machine(spotRow[s]))) {
        continue;
      }
      Batch[] more = Arrays.copyOf(spotNow[s], spotNow[s].length + 1);
      more[more.length - 1] = own;
      spotNow[s] = more;
      changed[s] = true;
      return true;
    }
    return false;
  }

  private void write(Desk desk) {
    for (int s = 0; s < spots; s++) {
      if (changed[s]) {
        desk.edit.put(spotRow[s], spotAt[s], 1, spotNow[s]);
      }
    }
  }
}
