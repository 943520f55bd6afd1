package spangle.plan.clock;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Leads the loads of one batch through a line: the stations ahead, the machine, the stations
 * behind. Everything goes as early as it may; where work would spoil by waiting, the visits before
 * are held back until it does not. Scratch; not for two threads.
 */
final class BatchWalk {
  private static final int ROUNDS = 40;

  int start;
  int setupStart;
  int[] loadFirst = new int[4];
  int[] loadEnd = new int[4];
  int[] carrierNumber = new int[4];
  int[] visits = new int[12];
  final Chains chains;
  final int stations;

  final Floor floor;
  final LineFacts line;
  final StateMap map;

  /** Each load's and station's earliest start, raised when a visit is held back. */
  private int[] floorMin = new int[4];

  private int[] arrival = new int[4];
  private int batchFloor;

  /** The line as it stands while the batch goes through. */
  final int[] state;

  /** The line as it stood when the batch left the machine. */
  private final int[] behind;

  BatchWalk(Floor floor, LineFacts line, StateMap map) {
    this.floor = floor;
    this.line = line;
    this.map = map;
    this.chains = new Chains(floor);
    this.stations = line.stations.length;
    this.state = new int[map.size];
    this.behind = new int[map.size];
  }

  private void makeRoom(int loads) {
    if (loadFirst.length < loads) {
      loadFirst = new int[2 * loads];
      loadEnd = new int[2 * loads];
      carrierNumber = new int[2 * loads];
      arrival = new int[2 * loads];
    }
    if (visits.length < loads * stations * 3) {
      visits = new int[2 * loads * stations * 3];
    }
    if (floorMin.length < loads * stations) {
      floorMin = new int[2 * loads * stations];
    }
  }

  /**
   * Leads a batch through; chains must have been read. The state and what was drawn are changed to
   * what stands behind the batch, or left alone when no time is found.
   */
  void walk(Batch batch, int machine, int[] lineState, double[] drawn, long[] tally) {
    makeRoom(batch.loads.length);
    if (batch.isFrozen) {
      System.arraycopy(lineState, 0, state, 0, state.length);
      FrozenWalk.recall(this, batch, machine, drawn, tally);
      WalkTally.count(this, batch, line.machines[machine], lineState, tally);
      System.arraycopy(state, 0, lineState, 0, state.length);
      return;
    }
    if (chains.ready(batch) == Hours.NEVER) {
      lose(batch, Loss.EARLIER_LEG, tally);
      return;
    }
    if (batch.dwell < 0) {
      tally[Tally.WRONG_COMPANY]++;
      lose(batch, Loss.NO_TIME, tally);
      return;
    }
    Arrays.fill(floorMin, 0, batch.loads.length * stations, 0);
    batchFloor = 0;
    for (int i = 0; i < batch.loads.length; i++) {
      if (!drawFrom(batch.loads[i], i, drawn)) {
        giveBack(batch, i, drawn);
        lose(batch, Loss.NO_SUPPLY, tally);
        return;
      }
    }
    System.arraycopy(lineState, 0, state, 0, state.length);
    Loss loss = goThrough(batch, line.machines[machine], lineState);
    if (loss != null) {
      giveBack(batch, batch.loads.length, drawn);
      lose(batch, loss, tally);
      return;
    }
    WalkTally.count(this, batch, line.machines[machine], lineState, tally);
    System.arraycopy(state, 0, lineState, 0, state.length);
  }

  /**
   * Whether a batch finds no time in its machine even when no station delays it; chains must have
   * been read. Weeks that hold more than they can do have many such at their end.
   */
  boolean hopeless(Batch batch, int machine, int[] lineState, double[] drawn) {
    int there = 0;
    for (int i = 0; i < batch.loads.length; i++) {
      Load load = batch.loads[i];
      if (load.supply >= 0
          && floor.supplies[load.supply].there(drawn[load.supply] + load.supplyKg) == Hours.NEVER) {
        return false;
      }
      there = Math.max(there, Math.max(load.ready, chains.from[i]) + load.travel);
    }
    return MachineClock.start(
            line,
            line.machines[machine],
            batch,
            there,
            lineState[map.machineFree + machine],
            lineState[map.machineHeat + machine],
            lineState[map.machineSetting + machine])
        == Hours.NEVER;
  }

  private boolean drawFrom(Load load, int i, double[] drawn) {
    if (load.supply < 0) {
      return true;
    }
    drawn[load.supply] += load.supplyKg;
    int there = floor.supplies[load.supply].there(drawn[load.supply]);
    if (there == Hours.NEVER) {
      drawn[load.supply] -= load.supplyKg;
      return false;
    }
    int booth = booth(load);
    if (booth >= 0 && booth < line.ahead) {
      floorMin[i * stations + booth] = there;
    } else {
      batchFloor = Math.max(batchFloor, there);
    }
    return true;
  }

  private int booth(Load load) {
    for (int s = 0; s < stations; s++) {
      if (line.stations[s].changes() && load.minutes[s] > 0) {
        return s;
      }
    }
    return -1;
  }

  private static void giveBack(Batch batch, int count, double[] drawn) {
    for (int i = 0; i < count; i++) {
      if (batch.loads[i].supply >= 0) {
        drawn[batch.loads[i].supply] -= batch.loads[i].supplyKg;
      }
    }
  }

  private void lose(Batch batch, Loss loss, long[] tally) {
    start = loss.asStart();
    setupStart = start;
    Arrays.fill(loadFirst, 0, batch.loads.length, -1);
    Arrays.fill(loadEnd, 0, batch.loads.length, -1);
    Arrays.fill(carrierNumber, 0, batch.loads.length, 0);
    Arrays.fill(visits, 0, batch.loads.length * stations * 3, 0);
    tally[Tally.LOST + loss.place()] += batch.weight;
  }

  private @Nullable Loss goThrough(Batch batch, MachineFacts machine, int[] before) {
    for (int round = 0; round < ROUNDS; round++) {
      if (round > 0) {
        System.arraycopy(before, 0, state, 0, state.length);
      }
      Loss loss = goAhead(batch);
      if (loss == null) {
        loss = goIn(batch, machine);
      }
      if (loss != null) {
        return loss;
      }
      boolean held = false;
      for (int i = 0; i < batch.loads.length; i++) {
        held |= holdBack(batch.loads[i], i, 0, line.ahead, start);
      }
      if (held) {
        continue;
      }
      for (int i = 0; i < batch.loads.length; i++) {
        if (loadFirst[i] > chains.to[i]) {
          return Loss.GAP_TOO_LONG;
        }
      }
      return goBehind(batch);
    }
    return Loss.WAITS_TOO_LONG;
  }

  private @Nullable Loss goAhead(Batch batch) {
    for (int i = 0; i < batch.loads.length; i++) {
      Load load = batch.loads[i];
      int there = Math.max(load.ready, chains.from[i]);
      loadFirst[i] = -1;
      carrierNumber[i] = 0;
      CarrierFacts carrier = floor.carriers[load.carrier];
      if (carrier.counted) {
        int number = CarrierRow.take(map, state, carrier, there);
        int from = map.carrierFree + carrier.firstNumber + number;
        if (state[from] == Hours.NEVER) {
          return Loss.NO_CARRIER;
        }
        there = Math.max(there, state[from]);
        state[from] = Hours.NEVER;
        carrierNumber[i] = number + 1;
      }
      for (int s = 0; s < line.ahead; s++) {
        there = visit(load, i, s, there, true);
        if (there == Hours.NEVER) {
          return Loss.NO_TIME;
        }
      }
      arrival[i] = there;
    }
    return null;
  }

  /** Leads a load to a station; the end of its visit, or the same minute when it passes it by. */
  private int visit(Load load, int i, int s, int there, boolean inOrder) {
    int at = (i * stations + s) * 3;
    if (load.minutes[s] == 0) {
      visits[at] = 0;
      return there;
    }
    StationFacts station = line.stations[s];
    int wanted = station.stateFor(load);
    int earliest = Math.max(there, floorMin[i * stations + s]);
    if (inOrder) {
      earliest = Math.max(earliest, state[map.lastStart + s]);
    }
    int bestPlace = -1;
    int bestStart = Hours.NEVER;
    int bestSetup = 0;
    for (int p = station.firstPlace; p < station.firstPlace + station.spec.alike(); p++) {
      int setup = station.setupMin[state[map.placeState + p]][wanted];
      int placed =
          station
              .hours(p - station.firstPlace)
              .place(earliest, state[map.placeFree + p], setup, load.minutes[s]);
      if (placed < bestStart || (placed == bestStart && setup < bestSetup)) {
        bestPlace = p;
        bestStart = placed;
        bestSetup = setup;
        if (placed == earliest && setup == 0) {
          break;
        }
      }
    }
    if (bestPlace < 0) {
      return Hours.NEVER;
    }
    visits[at] = bestPlace - station.firstPlace + 1;
    visits[at + 1] = bestStart - bestSetup;
    visits[at + 2] = bestStart;
    int end = bestStart + load.minutes[s];
    state[map.placeFree + bestPlace] = end;
    state[map.placeState + bestPlace] = wanted;
    state[map.lastStart + s] = bestStart;
    if (loadFirst[i] < 0) {
      loadFirst[i] = bestStart;
    }
    return end;
  }

  private @Nullable Loss goIn(Batch batch, MachineFacts machine) {
    int there = batchFloor;
    for (int i = 0; i < batch.loads.length; i++) {
      there = Math.max(there, arrival[i]);
    }
    int m = machine.index;
    int setting = state[map.machineSetting + m];
    start = MachineClock.start(line, machine, batch, there, map, state);
    if (start == Hours.NEVER) {
      return machine.bath == null ? Loss.NO_TIME : lossInZinc(batch, machine, there);
    }
    setupStart = start - line.settingMin[setting][batch.setting];
    leave(batch, machine, start);
    for (int i = 0; i < batch.loads.length; i++) {
      if (loadFirst[i] < 0) {
        loadFirst[i] = start;
      }
    }
    return null;
  }

  /** Whether it is the zinc or the hours that give it no time. */
  private Loss lossInZinc(Batch batch, MachineFacts machine, int there) {
    int m = machine.index;
    int start =
        MachineClock.start(
            line,
            machine,
            batch,
            there,
            state[map.machineFree + m],
            state[map.machineHeat + m],
            state[map.machineSetting + m]);
    return start == Hours.NEVER ? Loss.NO_TIME : Loss.NO_ZINC_OVER_IT;
  }

  /** Leaves the machine as the batch leaves it. */
  void leave(Batch batch, MachineFacts machine, int startMin) {
    int m = machine.index;
    if (machine.bath != null) {
      int down = machine.bath.down(state[map.bathDown + m], state[map.bathAt + m], startMin);
      state[map.bathDown + m] = down + machine.bath.taken(batch);
      state[map.bathAt + m] = startMin;
    }
    state[map.machineFree + m] = MachineClock.free(machine, startMin + batch.dwell);
    state[map.machineHeat + m] = machine.heatFree(startMin, batch.massKg);
    state[map.machineSetting + m] = batch.setting;
  }

  /** Raises the earliest starts of visits after which the load would wait too long. */
  private boolean holdBack(Load load, int i, int from, int to, int nextStart) {
    boolean held = false;
    int next = nextStart;
    for (int s = to - 1; s >= from; s--) {
      if (load.minutes[s] == 0) {
        continue;
      }
      int began = visits[(i * stations + s) * 3 + 2];
      int wait = line.stations[s].spec.longestWaitAfterMin();
      if (wait != Integer.MAX_VALUE && next - began - load.minutes[s] > wait) {
        int wanted = next - wait - load.minutes[s];
        if (wanted > floorMin[i * stations + s]) {
          floorMin[i * stations + s] = wanted;
          held = true;
        }
        began = Math.max(began, wanted);
      }
      next = began;
    }
    return held;
  }

  private @Nullable Loss goBehind(Batch batch) {
    if (line.ahead < stations) {
      System.arraycopy(state, 0, behind, 0, state.length);
    }
    for (int round = 0; round < ROUNDS; round++) {
      if (round > 0) {
        System.arraycopy(behind, 0, state, 0, state.length);
      }
      boolean held = false;
      for (int i = 0; i < batch.loads.length; i++) {
        Load load = batch.loads[i];
        int there = start + batch.dwell;
        for (int s = line.ahead; s < stations; s++) {
          there = visit(load, i, s, there, false);
          if (there == Hours.NEVER) {
            return Loss.NO_TIME;
          }
        }
        loadEnd[i] = there;
        held |= holdBackBehind(load, i);
      }
      if (!held) {
        returnCarriers(batch);
        return null;
      }
    }
    return Loss.WAITS_TOO_LONG;
  }

  private boolean holdBackBehind(Load load, int i) {
    for (int s = stations - 1; s >= line.ahead; s--) {
      if (load.minutes[s] > 0) {
        return holdBack(load, i, line.ahead, s, visits[(i * stations + s) * 3 + 2]);
      }
    }
    return false;
  }

  /** Gives the carriers of a batch back when their loads are at their end. */
  void returnCarriers(Batch batch) {
    for (int i = 0; i < batch.loads.length; i++) {
      CarrierFacts carrier = floor.carriers[batch.loads[i].carrier];
      if (carrierNumber[i] > 0) {
        CarrierRow.giveBack(map, state, carrier, carrierNumber[i] - 1, loadEnd[i]);
      }
    }
  }
}
