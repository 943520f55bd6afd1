package spangle.plan.clock;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Walks one line whole: batches are fed in the order in which they could start at their machines,
 * and what the former plan already knew of the beginning is kept as long as nothing differs.
 * Scratch; not for two threads.
 */
final class LineWalk {
  private final Floor floor;
  private final LineFacts line;
  private final StateMap map;
  private final BatchWalk walk;
  private final int[] atTheStart;
  private final int[] ownLots;
  private int[] state;
  private double[] drawn = new double[0];
  private long[] tally = new long[0];

  /** By machine: when its next batch could start; worked out again when something bears on it. */
  private final long[] soonest;

  private final boolean[] known;

  LineWalk(Floor floor, LineFacts line) {
    this.floor = floor;
    this.line = line;
    this.map = new StateMap(line, floor.numbers[line.index]);
    this.walk = new BatchWalk(floor, line, map);
    this.atTheStart = map.atTheStart(line);
    this.state = atTheStart;
    this.soonest = new long[line.machines.length];
    this.known = new boolean[line.machines.length];
    this.ownLots =
        Arrays.stream(floor.lots)
            .filter(lot -> lot.line == line.index)
            .mapToInt(lot -> lot.index)
            .toArray();
  }

  /**
   * The line's plan for these rows.
   *
   * @param before the plan the rows were made from, if any
   * @param batches by machine
   * @param lotEnd end of every lot of the week; those of this line are written
   * @param drawnBefore what lines walked before draw of each supply
   * @param mayLose weight of lots it may leave without a time
   * @return null where it leaves out more; the ends of its lots then mean nothing
   */
  @Nullable LinePlan walk(
      @Nullable LinePlan before,
      Batch[][] batches,
      int[] lotEnd,
      double[] drawnBefore,
      long mayLose) {
    for (int lot : ownLots) {
      lotEnd[lot] = -1;
    }
    int count = 0;
    for (Batch[] row : batches) {
      count += row.length;
    }
    Passage[] feed = new Passage[count];
    int[] next = new int[batches.length];
    int[][] starts = new int[batches.length][];
    for (int m = 0; m < batches.length; m++) {
      starts[m] = new int[batches[m].length];
    }
    boolean same = before != null && Arrays.equals(before.drawnBefore, drawnBefore);
    state = atTheStart;
    drawn = drawnBefore;
    tally = new long[Tally.SIZE];
    Arrays.fill(known, false);
    for (int k = 0; k < count; k++) {
      int m = nextMachine(batches, next, lotEnd);
      Batch batch = batches[m][next[m]];
      walk.chains.read(batch, lotEnd);
      Passage passage = null;
      if (same && before != null && k < before.feed.length) {
        Passage was = before.feed[k];
        if (was.batch == batch && was.machine == m && (!batch.chained || walk.chains.same(was))) {
          passage = was;
        }
      }
      if (passage == null) {
        same = false;
        passage = pass(batch, m);
      }
      state = passage.state;
      drawn = passage.drawn;
      tally = passage.tally;
      if (passage.start < 0 && Tally.lost(tally) > mayLose) {
        return null;
      }
      feed[k] = passage;
      starts[m][next[m]] = passage.start;
      next[m]++;
      known[m] = false;
      for (int i = 0; i < batch.loads.length; i++) {
        for (int lot : batch.loads[i].lots) {
          lotEnd[lot] = passage.loadEnd[i];
        }
      }
    }
    return new LinePlan(line.index, rows(batches, starts), tally, feed, drawnBefore);
  }

  private Passage pass(Batch batch, int machine) {
    Loss loss = lossAtOnce(batch, machine);
    if (loss != null) {
      long[] newTally = tally.clone();
      newTally[Tally.LOST + loss.place()] += batch.weight;
      return Passage.lost(batch, machine, loss, walk, state, drawn, newTally);
    }
    int[] newState = state.clone();
    double[] newDrawn = floor.supplies.length == 0 ? drawn : drawn.clone();
    long[] newTally = tally.clone();
    walk.walk(batch, machine, newState, newDrawn, newTally);
    return new Passage(batch, machine, walk, newState, newDrawn, newTally);
  }

  /** Why a batch finds no time, where that shows before it is walked. */
  private @Nullable Loss lossAtOnce(Batch batch, int machine) {
    if (batch.isFrozen || batch.dwell < 0) {
      return null;
    }
    if (walk.chains.ready(batch) == Hours.NEVER) {
      return Loss.EARLIER_LEG;
    }
    return walk.hopeless(batch, machine, state, drawn) ? Loss.NO_TIME : null;
  }

  private Row[] rows(Batch[][] batches, int[][] starts) {
    Row[] rows = new Row[batches.length];
    for (int m = 0; m < rows.length; m++) {
      rows[m] = new Row(m, floor.front(line.index, m), batches[m], starts[m], new long[Tally.SIZE]);
    }
    return rows;
  }

  /** Frozen batches first; else the one that could start soonest at its machine. */
  private int nextMachine(Batch[][] batches, int[] next, int[] lotEnd) {
    int best = -1;
    long bestStart = Long.MAX_VALUE;
    for (int m = 0; m < batches.length; m++) {
      if (next[m] == batches[m].length) {
        continue;
      }
      Batch batch = batches[m][next[m]];
      if (!known[m] || batch.chained) {
        soonest[m] = couldStart(batch, m, lotEnd);
        known[m] = true;
      }
      if (best < 0 || soonest[m] < bestStart) {
        best = m;
        bestStart = soonest[m];
      }
    }
    return best;
  }

  private long couldStart(Batch batch, int m, int[] lotEnd) {
    if (batch.isFrozen) {
      return batch.frozen.get().startMin() - (1L << 40);
    }
    int ready = batch.ready;
    if (batch.chained) {
      walk.chains.read(batch, lotEnd);
      int after = walk.chains.ready(batch);
      if (after == Hours.NEVER) {
        return Hours.NEVER + 1L;
      }
      ready = Math.max(ready, after);
    }
    if (batch.dwell < 0) {
      return ready;
    }
    return MachineClock.start(line, line.machines[m], batch, ready + batch.travel, map, state);
  }
}
