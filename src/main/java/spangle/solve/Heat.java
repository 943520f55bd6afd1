package spangle.solve;

import java.util.stream.IntStream;
import spangle.plan.Goals;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.WeekPlan;

/**
 * Temperatures to begin and end with: a third of an ordinary batch's run and a fraction of the
 * smallest weight.
 *
 * @param hot at the beginning
 * @param cold at the end
 * @param boiling hot enough to make lots late for a while; no less than hot
 * @param fall how it falls in between
 */
record Heat(double hot, double cold, double boiling, Fall fall) {
  private static final double GENTLE = 0.05;
  private static final double BOILING = 0.3;

  /** For a plan people already know: warm enough to leave a dead end, not to shuffle the week. */
  Heat gentle() {
    double warm = Math.max(1.01 * cold, GENTLE * hot);
    return new Heat(warm, cold, warm, fall);
  }

  static Heat of(Floor floor, WeekPlan first) {
    double dwell = 0;
    for (LotFacts lot : floor.lots) {
      dwell += lot.shortestDwell();
    }
    dwell = Math.max(1, dwell / Math.max(1, floor.lots.length));
    Goals goals = floor.goals;
    int least =
        IntStream.of(
                goals.runMinute(),
                goals.lateLot(),
                goals.settingCost(),
                goals.colourCost(),
                goals.load())
            .filter(weight -> weight > 0)
            .min()
            .orElse(1);
    double cold = 0.15 * least;
    double hot = Math.max(2 * cold, 0.3 * dwell * Math.max(1, goals.runMinute()));
    double boiling = Math.max(hot, BOILING * goals.lateLot());
    return new Heat(hot, cold, boiling, Fall.of(dwell, boiling, cold, first));
  }
}
