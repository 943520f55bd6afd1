package spangle.plan.clock;

import java.util.Arrays;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/**
 * Stands a batch that has started or been announced where the brief has it. What hangs and has no
 * time in the week keeps its carrier and nothing else.
 */
final class FrozenWalk {
  private FrozenWalk() {}

  /** Stands a frozen batch where the brief has it. */
  static void recall(BatchWalk walk, Batch batch, int machine, double[] drawn, long[] tally) {
    PlannedBatch planned = batch.frozen.orElseThrow();
    walk.start = planned.startMin();
    walk.setupStart = planned.setupStartMin();
    for (int i = 0; i < batch.loads.length; i++) {
      Load load = batch.loads[i];
      PlannedLoad was = load.frozen.orElseThrow();
      walk.loadFirst[i] = walk.start;
      walk.loadEnd[i] = planned.endMin();
      Arrays.fill(walk.visits, i * walk.stations * 3, (i + 1) * walk.stations * 3, 0);
      was.visits().stream()
          .filter(visit -> !walk.floor.brief.isBeyond(visit.startMin()))
          .forEach(visit -> recallVisit(walk, load, visit, tally));
      for (PlannedLoad.PlannedVisit visit : was.visits()) {
        walk.loadFirst[i] = Math.min(walk.loadFirst[i], visit.startMin());
        walk.loadEnd[i] = Math.max(walk.loadEnd[i], visit.endMin());
      }
      CarrierFacts carrier = walk.floor.carriers[load.carrier];
      boolean known = was.carrierNumber() >= 1 && was.carrierNumber() <= carrier.spec.owned();
      walk.carrierNumber[i] = carrier.counted && known ? was.carrierNumber() : 0;
      if (load.supply >= 0) {
        drawn[load.supply] += load.supplyKg;
      }
    }
    walk.returnCarriers(batch);
    if (!batch.waits) {
      walk.leave(batch, walk.line.machines[machine], walk.start);
    }
  }

  /**
   * What the place stood at before a frozen visit: batches that started may have passed it in
   * another order than that of their machines.
   */
  private static int stateBefore(
      BatchWalk walk, StationFacts station, PlannedLoad.PlannedVisit visit) {
    int state = station.spec.initialState();
    int latest = Integer.MIN_VALUE;
    for (Batch[] row : walk.floor.frozen[walk.line.index]) {
      for (Batch batch : row) {
        for (Load load : batch.loads) {
          for (PlannedLoad.PlannedVisit other : load.frozen.orElseThrow().visits()) {
            if (other.stationId().equals(visit.stationId())
                && other.place() == visit.place()
                && other.startMin() < visit.startMin()
                && other.startMin() > latest) {
              latest = other.startMin();
              state = station.stateFor(load);
            }
          }
        }
      }
    }
    return state;
  }

  private static void recallVisit(
      BatchWalk walk, Load load, PlannedLoad.PlannedVisit visit, long[] tally) {
    for (int s = 0; s < walk.stations; s++) {
      StationFacts station = walk.line.stations[s];
      if (!station.spec.id().equals(visit.stationId())) {
        continue;
      }
      int place = station.firstPlace + Math.min(visit.place(), station.spec.alike()) - 1;
      int wanted = station.stateFor(load);
      int was = stateBefore(walk, station, visit);
      int cost = station.setupCost[was][wanted];
      tally[Tally.COLOUR_COST] += cost;
      if (cost > 0 || station.setupMin[was][wanted] > 0) {
        tally[Tally.COLOUR_CHANGES]++;
      }
      if (visit.endMin() >= walk.state[walk.map.placeFree + place]) {
        walk.state[walk.map.placeState + place] = wanted;
      }
      walk.state[walk.map.placeFree + place] =
          Math.max(walk.state[walk.map.placeFree + place], visit.endMin());
      walk.state[walk.map.lastStart + s] =
          Math.max(walk.state[walk.map.lastStart + s], visit.startMin());
    }
  }
}
