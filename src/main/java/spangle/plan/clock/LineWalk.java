package spangle.plan.clock;

import java.util.ArrayList;
import java.util.List;
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

  LineWalk(Floor floor, LineFacts line) {
    this.floor = floor;
    this.line = line;
    this.map = new StateMap(line, floor.numbers[line.index]);
    this.walk = new BatchWalk(floor, line, map);
    this.atTheStart = map.atTheStart(line);
    this.state = atTheStart;
    this.ownLots =
        java.util.Arrays.stream(floor.lots)
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
   */
  LinePlan walk(@Nullable LinePlan before, Batch[][] batches, int[] lotEnd, double[] drawnBefore) {
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
    boolean same = before != null && java.util.Arrays.equals(before.drawnBefore, drawnBefore);
    state = atTheStart;
    drawn = drawnBefore;
    tally = new long[Tally.SIZE];
    for (int k = 0; k < count; k++) {
      int m = nextMachine(batches, next, lotEnd);
      Batch batch = batches[m][next[m]];
      walk.readChains(batch, lotEnd);
      Passage passage = null;
      if (same && before != null && k < before.feed.length) {
        Passage was = before.feed[k];
        if (was.batch == batch && was.machine == m && (!batch.chained || walk.sameChains(was))) {
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
      feed[k] = passage;
      starts[m][next[m]] = passage.start;
      next[m]++;
      for (int i = 0; i < batch.loads.length; i++) {
        for (int lot : batch.loads[i].lots) {
          lotEnd[lot] = passage.loadEnd[i];
        }
      }
    }
    return new LinePlan(line.index, rows(batches, starts), tally, feed, drawnBefore);
  }

  private Passage pass(Batch batch, int machine) {
    int[] newState = state.clone();
    double[] newDrawn = floor.supplies.length == 0 ? drawn : drawn.clone();
    long[] newTally = tally.clone();
    walk.walk(batch, machine, newState, newDrawn, newTally);
    return new Passage(batch, machine, walk, newState, newDrawn, newTally);
  }

  private Row[] rows(Batch[][] batches, int[][] starts) {
    List<Row> rows = new ArrayList<>(batches.length);
    for (int m = 0; m < batches.length; m++) {
      rows.add(new Row(m, floor.front(line.index, m), batches[m], starts[m], new long[Tally.SIZE]));
    }
    return rows.toArray(Row[]::new);
  }

  /** Frozen batches first; else the one that could start soonest at its machine. */
  private int nextMachine(Batch[][] batches, int[] next, int[] lotEnd) {
    int best = -1;
    long bestStart = Long.MAX_VALUE;
    for (int m = 0; m < batches.length; m++) {
      if (next[m] == batches[m].length) {
        continue;
      }
      long start = couldStart(batches[m][next[m]], m, lotEnd);
      if (best < 0 || start < bestStart) {
        best = m;
        bestStart = start;
      }
    }
    return best;
  }

  private long couldStart(Batch batch, int m, int[] lotEnd) {
    if (batch.frozen.isPresent()) {
      return batch.frozen.get().startMin() - (1L << 40);
    }
    int ready = batch.ready;
    if (batch.chained) {
      walk.readChains(batch, lotEnd);
      int after = walk.chainReady(batch);
      if (after == Hours.NEVER) {
        return Hours.NEVER + 1L;
      }
      ready = Math.max(ready, after);
    }
    if (batch.dwell < 0) {
      return ready;
    }
    return MachineClock.start(
        line,
        line.machines[m],
        batch,
        ready + batch.travel,
        state[map.machineFree + m],
        state[map.machineHeat + m],
        state[map.machineSetting + m]);
  }
}
