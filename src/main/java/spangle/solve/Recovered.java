package spangle.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;

/**
 * A written plan that is timed again may come out a few minutes different where its search left
 * work standing in the middle of a row; a step that was planned to the last minute its surface
 * keeps then finds no time any more. Such work is given another place with every date kept, so that
 * a promise or an answer does not begin with a plan in which it is lost.
 */
final class Recovered {
  private Recovered() {}

  /** The same plan with all its work in time; unchanged where nothing is lost or no place found. */
  static WeekPlan of(WeekPlan again) {
    boolean[] in = new LeftOuts(again, Map.of()).inRows();
    List<String> lost =
        Arrays.stream(again.floor.lots)
            .filter(lot -> in[lot.index] && again.lotEnd(lot.index) < 0)
            .map(lot -> lot.lot.id())
            .toList();
    if (lost.isEmpty()) {
      return again;
    }
    WeekPlan without = new WeekClock(again.floor).plan(Tidy.running(again));
    return new Inserter(without)
        .into(lost)
        .filter(whole -> whole.left() <= again.left() && whole.broken() <= again.broken())
        .orElse(again);
  }
}
