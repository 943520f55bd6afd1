package spangle.solve.move;

import java.util.Arrays;
import java.util.stream.IntStream;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LineFacts;
import spangle.plan.clock.LinePlan;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;
import spangle.plan.clock.Row;
import spangle.plan.clock.WeekEdit;
import spangle.plan.clock.WeekPlan;

/**
 * What every move works with: the plan it starts from, the edit it fills, dice, and ways of picking
 * a place in a row. One per searching thread.
 */
final class Desk {
  final Floor floor;
  final Hanging hanging;
  final Dice dice;
  final int[] openLines;

  WeekPlan plan;
  WeekEdit edit = new WeekEdit();
  LinePlan line;
  LineFacts facts;

  /** The place picked last. */
  int row;

  int at;

  Desk(Floor floor, Dice dice, WeekPlan plan) {
    this.floor = floor;
    this.hanging = new Hanging(floor);
    this.dice = dice;
    this.plan = plan;
    this.line = plan.line(0);
    this.facts = floor.lines[0];
    this.openLines =
        IntStream.range(0, floor.lines.length)
            .filter(l -> Arrays.stream(floor.lots).anyMatch(lot -> lot.line == l))
            .toArray();
  }

  /** Opens a line for the next move; false when nothing on it can be moved. */
  boolean begin(WeekPlan from, WeekEdit to) {
    plan = from;
    edit = to;
    int l = openLines[0];
    if (openLines.length > 1) {
      int all = 0;
      for (int open : openLines) {
        all += plan.line(open).movable();
      }
      if (all == 0) {
        return false;
      }
      int draw = dice.below(all);
      for (int open : openLines) {
        draw -= plan.line(open).movable();
        l = open;
        if (draw < 0) {
          break;
        }
      }
    }
    line = plan.line(l);
    facts = floor.lines[l];
    edit.reset(l);
    return line.movable() > 0;
  }

  /** Picks any movable batch of the line. */
  void anyBatch() {
    if (line.size() == 1) {
      row = 0;
      Row only = line.row(0);
      at = only.front + dice.below(only.size() - only.front);
      return;
    }
    int draw = dice.below(line.movable());
    for (int m = 0; m < line.size(); m++) {
      Row candidate = line.row(m);
      int here = candidate.size() - candidate.front;
      if (draw < here) {
        row = m;
        at = candidate.front + draw;
        return;
      }
      draw -= here;
    }
    throw new IllegalStateException("no movable batch");
  }

  Row rowAt(int m) {
    return line.row(m);
  }

  Batch batch() {
    return line.row(row).batch(at);
  }

  MachineFacts machine(int m) {
    return facts.machines[m];
  }

  /** Picks a machine that takes such work; false after a few vain throws. */
  boolean anyRow(long machines) {
    int count = line.size();
    if (count == 1) {
      row = 0;
      return (machines & 1) != 0;
    }
    int fitting = Long.bitCount(machines);
    if (fitting == 0) {
      return false;
    }
    int draw = dice.below(fitting);
    long bits = machines;
    while (draw-- > 0) {
      bits &= bits - 1;
    }
    row = Long.numberOfTrailingZeros(bits);
    return row < count;
  }

  /** A minute a load would like to be near: where people know it, when it is ready, due, or now. */
  int wish(Load load, int startNow) {
    int known = load.announcedTimes();
    if (known > 0 && dice.percent(50)) {
      return load.announcedTime(dice.below(known));
    }
    int draw = dice.below(4);
    if (draw == 0) {
      return load.ready;
    }
    if (draw == 1 && load.due != Integer.MAX_VALUE) {
      return load.due - shortest(load);
    }
    if (draw == 2 && load.due != Integer.MAX_VALUE && load.due > load.ready) {
      return load.ready + dice.below(Math.max(1, load.due - load.ready));
    }
    return startNow < 0 ? load.ready : startNow;
  }

  private static int shortest(Load load) {
    int best = Integer.MAX_VALUE;
    for (int min : load.dwellMin) {
      if (min >= 0) {
        best = Math.min(best, min);
      }
    }
    return best;
  }

  /** Picks a batch in the row: near that minute in six of ten draws, else anywhere. */
  boolean batchNear(int minute) {
    Row in = line.row(row);
    int size = in.size() - in.front;
    if (size <= 0) {
      return false;
    }
    if (dice.percent(60)) {
      int place = in.placeAt(minute) + dice.below(7) - 3;
      at = Math.max(in.front, Math.min(in.size() - 1, place));
    } else {
      at = in.front + dice.below(size);
    }
    return true;
  }

  /** Picks a gap in the row, as the place of the batch behind it. */
  void gapNear(int minute) {
    Row in = line.row(row);
    if (dice.percent(60)) {
      int place = in.placeAt(minute) + dice.below(5) - 2;
      at = Math.max(in.front, Math.min(in.size(), place));
    } else {
      at = in.front + dice.below(in.size() - in.front + 1);
    }
  }

  /**
   * A setting at which the load runs: mostly its shortest, sometimes any; -1 where there is none.
   */
  int setting(Load load) {
    int best = -1;
    int count = 0;
    for (int s = 0; s < load.dwellMin.length; s++) {
      if (load.dwellMin[s] >= 0) {
        count++;
        if (best < 0 || load.dwellMin[s] < load.dwellMin[best]) {
          best = s;
        }
      }
    }
    if (count > 1 && dice.percent(50)) {
      int draw = dice.below(count);
      for (int s = 0; s < load.dwellMin.length; s++) {
        if (load.dwellMin[s] >= 0 && draw-- == 0) {
          return s;
        }
      }
    }
    return best;
  }

  /** Puts two changes of single places or gaps of any rows into the edit, in order. */
  void putTwo(
      int row1, int at1, int gone1, Batch[] come1, int row2, int at2, int gone2, Batch[] come2) {
    boolean first = row1 != row2 || at1 < at2 || (at1 == at2 && gone1 == 0);
    if (first) {
      edit.put(row1, at1, gone1, come1);
      edit.put(row2, at2, gone2, come2);
    } else {
      edit.put(row2, at2, gone2, come2);
      edit.put(row1, at1, gone1, come1);
    }
  }
}
