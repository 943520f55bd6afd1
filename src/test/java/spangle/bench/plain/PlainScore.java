package spangle.bench.plain;

import java.util.HashMap;
import java.util.Map;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;
import spangle.plan.Goals;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineGuess;

/** Reads batches off the lists that changed and times them with the machine clock. */
public final class PlainScore implements IncrementalScoreCalculator<PlainWeek, HardSoftLongScore> {
  private Goals goals = Goals.usual();
  private final Map<PlainOven, long[]> scores = new HashMap<>();
  private final Map<PlainOven, Boolean> changed = new HashMap<>();

  @Override
  public void resetWorkingSolution(PlainWeek week) {
    goals = week.goals();
    scores.clear();
    changed.clear();
    week.getOvens().forEach(oven -> changed.put(oven, true));
  }

  @Override
  public void beforeEntityAdded(Object entity) {}

  @Override
  public void afterEntityAdded(Object entity) {
    changed(entity);
  }

  @Override
  public void beforeVariableChanged(Object entity, String variableName) {}

  @Override
  public void afterVariableChanged(Object entity, String variableName) {
    changed(entity);
  }

  @Override
  public void afterListVariableChanged(
      Object entity, String variableName, int fromIndex, int toIndex) {
    changed(entity);
  }

  @Override
  public void beforeEntityRemoved(Object entity) {}

  @Override
  public void afterEntityRemoved(Object entity) {}

  private void changed(Object entity) {
    if (entity instanceof PlainOven oven) {
      changed.put(oven, true);
    }
  }

  @Override
  public HardSoftLongScore calculateScore() {
    for (PlainOven oven : changed.keySet()) {
      scores.put(oven, new Row(oven).read());
    }
    changed.clear();
    long hard = 0;
    long soft = 0;
    for (long[] each : scores.values()) {
      hard += each[0];
      soft += each[1];
    }
    return HardSoftLongScore.of(-hard, -soft);
  }

  /** One oven's list on its way to batches. */
  private final class Row {
    private final PlainOven oven;
    private final MachineGuess clock;
    private long hard;
    private long soft;

    Row(PlainOven oven) {
      this.oven = oven;
      this.clock = new MachineGuess(oven.line(), oven.machine());
    }

    long[] read() {
      Batch batch = null;
      for (PlainLot lot : oven.getLots()) {
        Batch alone = Batch.of(lot.setting, lot.load);
        if (!alone.mayRunOn(oven.machine())) {
          hard++;
        } else if (batch == null) {
          batch = alone;
        } else if (batch.setting == lot.setting && batch.takes(lot.load, oven.machine())) {
          batch = batch.with(lot.load);
        } else {
          run(batch);
          batch = alone;
        }
      }
      if (batch != null) {
        run(batch);
      }
      return new long[] {hard, soft};
    }

    private void run(Batch batch) {
      int start = clock.start(batch, batch.ready);
      if (start == Integer.MAX_VALUE) {
        hard += batch.weight;
        return;
      }
      int from = clock.setting();
      soft += (long) goals.runMinute() * batch.dwell;
      soft += (long) goals.settingCost() * oven.line().settingCost[from][batch.setting];
      soft += (long) goals.settingMinute() * oven.line().settingMin[from][batch.setting];
      for (Load load : batch.loads) {
        soft += start + batch.dwell > load.due ? (long) goals.lateLot() * load.weight : 0;
      }
      clock.pass(batch, start);
    }
  }
}
