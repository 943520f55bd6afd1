package spangle.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.plan.SolveNote;
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
 * The same week by the usual rule of the shop (common practice): by due date, then by colour, each
 * rack filled in turn, each oven and kettle with the next racks, the machine that is free first.
 * The same clock and the same rules as every plan; no search. What a plan saves is counted against
 * it.
 */
public final class ByHand {
  private final Floor floor;
  private final Hanging hanging;
  private final WeekClock clock;
  private final Batch[][][] rows;
  private final int[] endGuess;

  private ByHand(Floor floor) {
    this.floor = floor;
    this.hanging = new Hanging(floor);
    this.clock = new WeekClock(floor);
    this.rows = new Batch[floor.lines.length][][];
    this.endGuess = new int[floor.lots.length];
  }

  /**
   * The plan by the usual rule.
   *
   * @throws IllegalArgumentException when the brief names what it does not say
   */
  public static Plan plan(Brief brief) {
    WeekPlan week = new ByHand(Floor.of(brief)).build();
    return new PlanWriter(week)
        .write(new SolveNote(0, 0, "by hand: due date, then colour, each rack filled in turn"));
  }

  private WeekPlan build() {
    for (LineFacts line : floor.lines) {
      rows[line.index] = new Batch[line.machines.length][];
      for (int m = 0; m < line.machines.length; m++) {
        rows[line.index][m] = floor.frozen(line.index, m);
      }
    }
    WeekPlan plan = clock.plan(rows);
    for (int l : floor.lineOrder) {
      for (LotFacts lot : floor.lots) {
        endGuess[lot.index] = plan.lotEnd(lot.index);
      }
      new OneLine(floor.lines[l]).fill();
      plan = clock.plan(rows);
    }
    return plan;
  }

  /** Due date, then colour; within both the finish, then what is due and ready first. */
  private static final Comparator<LotFacts> USUAL_ORDER =
      Comparator.comparingInt((LotFacts lot) -> Math.floorDiv(lot.lot.dueMin(), Brief.DAY_MIN))
          .thenComparingInt(lot -> lot.lot.finish().index())
          .thenComparingInt(lot -> lot.finish)
          .thenComparingInt(lot -> lot.lot.dueMin())
          .thenComparingInt(lot -> lot.lot.readyMin())
          .thenComparingInt(lot -> lot.index);

  /** One line, machine by machine. */
  private final class OneLine {
    private final LineFacts line;
    private final MachineGuess[] guesses;
    private final List<List<Batch>> filled = new ArrayList<>();
    private final List<LotFacts> waiting;

    OneLine(LineFacts line) {
      this.line = line;
      this.guesses = new MachineGuess[line.machines.length];
      for (int m = 0; m < guesses.length; m++) {
        guesses[m] = new MachineGuess(line, line.machines[m]);
        List<Batch> row = new ArrayList<>(Arrays.asList(rows[line.index][m]));
        for (Batch frozen : row) {
          guesses[m].pass(frozen, frozen.frozen.orElseThrow().startMin());
        }
        filled.add(row);
      }
      boolean[] started = floor.frozenLots();
      waiting =
          new ArrayList<>(
              Arrays.stream(floor.lots)
                  .filter(lot -> lot.line == line.index && lot.hasPlace() && !started[lot.index])
                  .sorted(USUAL_ORDER)
                  .toList());
    }

    void fill() {
      boolean[] closed = new boolean[guesses.length];
      for (int m = MachineGuess.firstFree(guesses, closed);
          m >= 0 && !waiting.isEmpty();
          m = MachineGuess.firstFree(guesses, closed)) {
        if (oneBatch(m)) {
          Arrays.fill(closed, false);
        } else {
          closed[m] = true;
        }
      }
      waiting.forEach(this::strand);
      for (int m = 0; m < guesses.length; m++) {
        rows[line.index][m] = filled.get(m).toArray(Batch[]::new);
      }
    }

    /** Minute from which a lot may be hung; huge while its leg before has no time. */
    private int ready(LotFacts lot) {
      if (lot.lot.after().isEmpty()) {
        return lot.lot.readyMin();
      }
      if (lot.after < 0 || endGuess[lot.after] < 0) {
        return Integer.MAX_VALUE;
      }
      return Math.max(lot.lot.readyMin(), endGuess[lot.after] + lot.lot.after().get().minGapMin());
    }

    private int start(Batch batch, LotFacts lot, int m) {
      return guesses[m].start(batch, ready(lot) + floor.single(lot.index, 0).travel());
    }

    private boolean oneBatch(int m) {
      int soonest = Integer.MAX_VALUE;
      for (LotFacts lot : waiting) {
        Optional<Batch> alone = ready(lot) == Integer.MAX_VALUE ? Optional.empty() : alone(lot, m);
        if (alone.isPresent()) {
          soonest = Math.min(soonest, start(alone.get(), lot, m));
          if (soonest <= guesses[m].free()) {
            break;
          }
        }
      }
      if (soonest == Integer.MAX_VALUE) {
        return false;
      }
      List<LotFacts> taken = new ArrayList<>();
      Batch batch = fillInTurn(m, soonest, taken);
      int start = 0;
      for (LotFacts lot : taken) {
        start = Math.max(start, start(batch, lot, m));
      }
      if (start == Integer.MAX_VALUE) {
        // The last opening is too short for all of them: the clock will say so of each.
        start = soonest;
      }
      guesses[m].pass(batch, start);
      filled.get(m).add(batch);
      for (Load load : batch.loads) {
        for (int lot : load.lots) {
          endGuess[lot] = start + batch.dwell + load.behind();
        }
      }
      waiting.removeAll(taken);
      return true;
    }

    /**
     * Down the list from the first lot that is ready by then, until the next rack does not go in
     * any more.
     */
    private Batch fillInTurn(int m, int soonest, List<LotFacts> taken) {
      Batch batch = null;
      for (LotFacts lot : waiting) {
        if ((lot.machines >>> m & 1) == 0 || ready(lot) > soonest) {
          continue;
        }
        Optional<Batch> more =
            batch == null ? alone(lot, m) : next(batch, taken.get(taken.size() - 1), lot, m);
        if (more.isPresent()) {
          batch = more.get();
          taken.add(lot);
        } else if (batch != null) {
          break;
        }
      }
      if (batch == null) {
        throw new IllegalStateException("a lot that could start soonest was not found again");
      }
      return batch;
    }

    /** On the rack begun last where it has the same day and colour and still hangs, else anew. */
    private Optional<Batch> next(Batch batch, LotFacts before, LotFacts lot, int m) {
      int last = batch.loads.length - 1;
      boolean sameRack =
          before.finish == lot.finish
              && Math.floorDiv(before.lot.dueMin(), Brief.DAY_MIN)
                  == Math.floorDiv(lot.lot.dueMin(), Brief.DAY_MIN);
      if (sameRack) {
        Optional<Batch> joined =
            hanging
                .join(batch.loads[last], lot.index)
                .map(load -> batch.replacing(last, load))
                .filter(more -> more.mayRunOn(line.machines[m]));
        if (joined.isPresent()) {
          return joined;
        }
      }
      for (int choice = 0; choice < lot.carriers.length; choice++) {
        Load load = floor.single(lot.index, choice);
        if (batch.takes(load, line.machines[m]) && enough(batch, load)) {
          return Optional.of(batch.with(load));
        }
      }
      return Optional.empty();
    }

    private boolean enough(Batch batch, Load load) {
      long used = Arrays.stream(batch.loads).filter(l -> l.carrier == load.carrier).count();
      return used < floor.carriers[load.carrier].spec.owned();
    }

    /** A batch of that lot alone at the setting that is reached soonest. */
    private Optional<Batch> alone(LotFacts lot, int m) {
      for (int choice = 0; choice < lot.carriers.length; choice++) {
        Load load = floor.single(lot.index, choice);
        Batch best = null;
        int least = Integer.MAX_VALUE;
        for (int s = 0; s < line.settings; s++) {
          if (load.dwellMin[s] >= 0) {
            int minutes = load.dwellMin[s] + line.settingMin[guesses[m].setting()][s];
            Batch batch = Batch.of(s, load);
            if (minutes < least && batch.mayRunOn(line.machines[m])) {
              least = minutes;
              best = batch;
            }
          }
        }
        if (best != null) {
          return Optional.of(best);
        }
      }
      return Optional.empty();
    }

    /** At the end of a row, where the clock says why it finds no time. */
    private void strand(LotFacts lot) {
      for (int m = 0; m < guesses.length; m++) {
        Optional<Batch> alone = alone(lot, m);
        if (alone.isPresent()) {
          filled.get(m).add(alone.get());
          return;
        }
      }
    }
  }
}
