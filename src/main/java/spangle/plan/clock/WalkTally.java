package spangle.plan.clock;

import java.util.Arrays;

/** Counts what a batch that has gone through its line costs: runs, lateness, moves, changes. */
final class WalkTally {
  private WalkTally() {}

  /** Counts a batch; before is the state of its line ahead of it. */
  static void count(BatchWalk walk, Batch batch, MachineFacts machine, int[] before, long[] tally) {
    batch.countRun(machine, 1, tally);
    if (!batch.waits) {
      MachineClock.countSetting(
          walk.line, before[walk.map.machineSetting + machine.index], batch.setting, 1, tally);
    }
    boolean moves = !walk.floor.announced.isEmpty();
    for (int i = 0; i < batch.loads.length; i++) {
      batch.loads[i].countLate(walk.loadEnd[i], 1, tally);
      if (moves) {
        tally[Tally.MOVED] +=
            batch.loads[i].moved(machine.index, batch.setting, walk.start, walk.loadFirst[i]);
      }
    }
    countColours(walk, batch, before, tally);
  }

  private static void countColours(BatchWalk walk, Batch batch, int[] before, long[] tally) {
    for (int s = 0; s < walk.stations; s++) {
      StationFacts station = walk.line.stations[s];
      if (!station.changes()) {
        continue;
      }
      int first = walk.map.placeState + station.firstPlace;
      int[] states = Arrays.copyOfRange(before, first, first + station.spec.alike());
      for (int i = 0; i < batch.loads.length; i++) {
        int place = walk.visits[(i * walk.stations + s) * 3] - 1;
        if (place >= 0) {
          int wanted = batch.loads[i].finishIndex;
          int cost = station.setupCost[states[place]][wanted];
          tally[Tally.COLOUR_COST] += cost;
          if (cost > 0 || station.setupMin[states[place]][wanted] > 0) {
            tally[Tally.COLOUR_CHANGES]++;
          }
          states[place] = wanted;
        }
      }
    }
  }
}
