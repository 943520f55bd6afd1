package spangle.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;
import spangle.plan.PlannedBatch;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LineFacts;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.MachineGuess;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;
import spangle.solve.move.Hanging;

/**
 * Builds a first complete plan in one pass: always the machine that is free first, the most urgent
 * lot that can be there, and with it whatever fits its batch and does not hold it up.
 */
final class Builder {
  private static final int WINDOW = 300;

  /** Questions of geometry asked in vain for each batch in a small week; fewer in a huge one. */
  private static final int QUESTIONS = 60_000;

  private static final int FEWEST_QUESTIONS = 12;
  private final Floor floor;
  private final Hanging hanging;
  private final WeekClock clock;
  private final boolean[] done;
  private final int[] endGuess;
  private final Batch[][][] rows;

  Builder(Floor floor, WeekClock clock) {
    this.floor = floor;
    this.hanging = new Hanging(floor);
    this.clock = clock;
    this.done = floor.frozenLots();
    this.endGuess = new int[floor.lots.length];
    this.rows = new Batch[floor.lines.length][][];
  }

  /** The first plan. */
  WeekPlan build() {
    return build(List.of());
  }

  /**
   * The first plan, with these batches of an earlier one in their order. What that one has not is
   * put where there is room, or behind everything, whichever is the better plan: work that was left
   * out for good reason pushes nobody aside.
   */
  WeekPlan build(List<PlannedBatch> earlier) {
    WeekPlan filled = build(earlier, OneLine::fill);
    if (earlier.isEmpty()) {
      return filled;
    }
    WeekPlan behind = new Builder(floor, clock).build(earlier, OneLine::strand);
    return Bulletin.better(behind, filled) ? behind : filled;
  }

  private WeekPlan build(List<PlannedBatch> earlier, Consumer<OneLine> rest) {
    for (LineFacts line : floor.lines) {
      rows[line.index] = new Batch[line.machines.length][];
      for (int m = 0; m < line.machines.length; m++) {
        rows[line.index][m] = floor.frozen(line.index, m);
      }
    }
    new Recall(floor, hanging).recall(earlier, rows, done);
    WeekPlan plan = clock.plan(rows);
    for (int l : floor.lineOrder) {
      for (LotFacts lot : floor.lots) {
        endGuess[lot.index] = plan.lotEnd(lot.index);
      }
      rest.accept(new OneLine(floor.lines[l], plan));
      plan = clock.plan(rows);
    }
    return plan;
  }

  /** Fills one line. */
  private final class OneLine {
    private final LineFacts line;
    private final List<List<Batch>> filled = new ArrayList<>();
    private final MachineGuess[] guesses;
    private int[] waiting;
    private int count;

    OneLine(LineFacts line, WeekPlan before) {
      this.line = line;
      guesses = new MachineGuess[line.machines.length];
      for (int m = 0; m < guesses.length; m++) {
        guesses[m] = new MachineGuess(line, line.machines[m]);
        List<Batch> row = new ArrayList<>();
        for (int k = 0; k < rows[line.index][m].length; k++) {
          Batch batch = rows[line.index][m][k];
          row.add(batch);
          if (before.line(line.index).row(m).runs(k)) {
            guesses[m].pass(batch, before.line(line.index).row(m).start(k));
          }
        }
        filled.add(row);
      }
      ToLongFunction<LotFacts> urgency = lot -> (long) lot.lot.dueMin() - lot.shortestDwell();
      waiting =
          Arrays.stream(floor.lots)
              .filter(lot -> lot.line == line.index && lot.hasPlace() && !done[lot.index])
              .sorted(
                  Comparator.comparingLong(urgency)
                      .thenComparingInt(lot -> lot.lot.leg())
                      .thenComparingInt(lot -> lot.lot.readyMin())
                      .thenComparingInt(lot -> lot.index))
              .mapToInt(lot -> lot.index)
              .toArray();
      count = waiting.length;
    }

    void fill() {
      boolean[] closed = new boolean[guesses.length];
      while (count > 0) {
        int m = MachineGuess.firstFree(guesses, closed);
        if (m < 0) {
          break;
        }
        if (oneBatch(m)) {
          Arrays.fill(closed, false);
        } else {
          closed[m] = true;
        }
      }
      strand();
    }

    /** Puts what waits behind everything, for the search to rescue. */
    void strand() {
      for (int k = 0; k < count; k++) {
        strand(floor.lots[waiting[k]]);
      }
      for (int m = 0; m < guesses.length; m++) {
        rows[line.index][m] = filled.get(m).toArray(Batch[]::new);
      }
    }

    private int lastFree(Batch alone) {
      int last = -1;
      for (int m = 0; m < guesses.length; m++) {
        boolean runs = alone.mayRunOn(line.machines[m]);
        if (runs && (last < 0 || guesses[m].free() > guesses[last].free())) {
          last = m;
        }
      }
      return last;
    }

    /** Minute at which a lot could be at the machine; NEVER while its leg before has no time. */
    private int there(LotFacts lot) {
      int ready = lot.lot.readyMin();
      if (lot.lot.after().isPresent()) {
        if (lot.after < 0 || endGuess[lot.after] < 0) {
          return Integer.MAX_VALUE;
        }
        ready = Math.max(ready, endGuess[lot.after] + lot.lot.after().get().minGapMin());
      }
      return ready + floor.single(lot.index, 0).travel();
    }

    private boolean oneBatch(int m) {
      MachineGuess guess = guesses[m];
      int seed = -1;
      int seedStart = Integer.MAX_VALUE;
      int seen = 0;
      for (int k = 0; k < count && seen < WINDOW; k++) {
        LotFacts lot = floor.lots[waiting[k]];
        if ((lot.machines >>> m & 1) == 0) {
          continue;
        }
        int there = there(lot);
        if (there == Integer.MAX_VALUE) {
          continue;
        }
        seen++;
        Load load = floor.single(lot.index, 0);
        int setting = setting(guess, load);
        if (setting < 0 || !Batch.of(setting, load).mayRunOn(line.machines[m])) {
          continue;
        }
        int start = guess.start(Batch.of(setting, load), there);
        if (start < seedStart) {
          seed = k;
          seedStart = start;
        }
        if (there <= guess.free()) {
          break;
        }
      }
      if (seed < 0) {
        return false;
      }
      LotFacts lot = floor.lots[waiting[seed]];
      Load load = floor.single(lot.index, 0);
      Batch batch = Batch.of(setting(guess, load), load);
      int there = there(lot);
      List<Integer> taken = new ArrayList<>();
      taken.add(seed);
      batch = company(m, batch, there, taken);
      int start = guess.start(batch, Math.max(there, seedStart));
      guess.pass(batch, start);
      filled.get(m).add(batch);
      for (Load each : batch.loads) {
        for (int index : each.lots) {
          endGuess[index] = start + batch.dwell + each.behind();
        }
      }
      remove(taken);
      return true;
    }

    private int setting(MachineGuess guess, Load load) {
      int best = -1;
      int least = Integer.MAX_VALUE;
      for (int s = 0; s < line.settings; s++) {
        if (load.dwellMin[s] >= 0) {
          int minutes = load.dwellMin[s] + line.settingMin[guess.setting()][s];
          if (minutes < least) {
            best = s;
            least = minutes;
          }
        }
      }
      return best;
    }

    /** Adds whatever fits and does not hold the batch up. */
    private Batch company(int m, Batch seed, int there, List<Integer> taken) {
      MachineGuess guess = guesses[m];
      Batch batch = seed;
      int start = guess.start(batch, there);
      int first = taken.get(0);
      int seen = 0;
      int vain = 0;
      int mostVain = Math.max(FEWEST_QUESTIONS, QUESTIONS / floor.lots.length);
      for (int k = 0; k < count && seen < WINDOW && vain < mostVain; k++) {
        LotFacts lot = floor.lots[waiting[k]];
        if (k == first || (lot.machines >>> m & 1) == 0 || there(lot) > start) {
          continue;
        }
        seen++;
        Optional<Batch> more = join(batch, lot, m);
        if (more.isPresent() && guess.start(more.get(), start) == start) {
          batch = more.get();
          taken.add(k);
          if (batch.units == line.machines[m].spec.capacityUnits() && lot.lot.alone()) {
            break;
          }
        } else if (!lot.lot.alone() && lot.group == batch.group) {
          vain++;
        }
      }
      return batch;
    }

    private Optional<Batch> join(Batch batch, LotFacts lot, int m) {
      if (!lot.lot.alone()) {
        for (int i = batch.loads.length - 1; i >= 0; i--) {
          Optional<Load> joined = hanging.join(batch.loads[i], lot.index);
          if (joined.isPresent()) {
            Batch more = batch.replacing(i, joined.get());
            if (more.mayRunOn(line.machines[m]) && more.dwell <= batch.dwell * 3 / 2) {
              return Optional.of(more);
            }
          }
        }
      }
      for (int choice = 0; choice < lot.carriers.length; choice++) {
        Load load = floor.single(lot.index, choice);
        if (batch.takes(load, line.machines[m])
            && load.dwellMin[batch.setting] <= batch.dwell * 3 / 2
            && enough(batch, load)) {
          return Optional.of(batch.with(load));
        }
      }
      return Optional.empty();
    }

    private boolean enough(Batch batch, Load load) {
      if (!floor.carriers[load.carrier].counted) {
        return true;
      }
      int used = 1;
      for (Load other : batch.loads) {
        used += other.carrier == load.carrier ? 1 : 0;
      }
      return used <= floor.carriers[load.carrier].spec.owned();
    }

    private void remove(List<Integer> taken) {
      boolean[] gone = new boolean[count];
      taken.forEach(k -> gone[k] = true);
      int write = 0;
      for (int k = 0; k < count; k++) {
        if (!gone[k]) {
          waiting[write++] = waiting[k];
        }
      }
      count = write;
    }

    /** At the end of the row that ends last of those that take it. */
    private void strand(LotFacts lot) {
      for (int choice = 0; choice < lot.carriers.length; choice++) {
        Load load = floor.single(lot.index, choice);
        for (int s = 0; s < line.settings; s++) {
          if (load.dwellMin[s] < 0) {
            continue;
          }
          int last = lastFree(Batch.of(s, load));
          if (last >= 0) {
            filled.get(last).add(Batch.of(s, load));
            return;
          }
        }
      }
    }
  }
}
