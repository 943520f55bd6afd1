package spangle.solve;

import java.util.stream.IntStream;
import spangle.plan.Goals;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.WeekPlan;

/**
 * Temperatures to begin and end with.
 *
 * @param hot hot enough to make single lots late for a while; no less than warm
 * @param warm a third of an ordinary batch's run: batches are parted and joined, lots stay in time
 * @param cold at the end, a fraction of the smallest weight
 * @param fall how it falls in between
 */
record Heat(double hot, double warm, double cold, Fall fall) {
  private static final double GENTLE = 0.05;

  /**
   * Part of a late lot's weight at which lots are late for a while. Measured at 0.15, 0.3 and 0.6
   * on a dozen weeks of 250 and 500 lots: which lots are in time is then found out at leisure.
   */
  private static final double HOT = 0.6;

  /** For a plan people already know: warm enough to leave a dead end, not to shuffle the week. */
  Heat gentle() {
    double gently = Math.max(1.01 * cold, GENTLE * warm);
    return new Heat(gently, gently, cold, fall);
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
    double warm = Math.max(2 * cold, 0.3 * dwell * Math.max(1, goals.runMinute()));
    double hot = Math.max(warm, HOT * goals.lateLot());
    return new Heat(hot, warm, cold, Fall.of(dwell, hot, cold, first));
  }
}
