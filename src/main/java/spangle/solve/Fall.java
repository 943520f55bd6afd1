package spangle.solve;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import spangle.plan.Goals;
import spangle.plan.clock.Tally;
import spangle.plan.clock.WeekPlan;

/**
 * How the temperature falls from the hottest to the coldest: geometrically, but slowly where some
 * goal is being decided and quickly where none is. A goal is decided between the temperature at
 * which its large changes freeze and that at which its smallest does; weights that lie orders of
 * magnitude apart leave long stretches in between where nothing happens. The more of a plan's value
 * a goal makes up, the longer its stretch takes.
 */
final class Fall {
  /** Slowness outside all stretches, within one, and for a goal that makes up the whole value. */
  private static final double IDLE = 0.1;

  private static final double BUSY = 0.4;
  private static final double WHOLE = 1.6;

  /**
   * Smallest change of a goal, in parts of its weight, that the cold end of its stretch decides.
   */
  private static final double SMALLEST = 0.12;

  /** Whole things such as a late lot are decided between these parts of their weight. */
  private static final double THING_HOT = 0.3;

  private static final double THING_COLD = 0.06;

  /** Natural logarithms of temperatures, falling, and the way from the first of them. */
  private final double[] edges;

  private final double[] way;

  private Fall(double[] edges, double[] way) {
    this.edges = edges;
    this.way = way;
  }

  /** A stretch of temperatures with how slowly it is passed. */
  private record Stretch(double hot, double cold, double slow) {}

  /**
   * The fall of one search.
   *
   * @param dwell mean minutes of a lot in an oven
   * @param hottest where a search may begin at most
   * @param coldest where it ends
   * @param plan a plan that shows how much each goal makes up
   */
  static Fall of(double dwell, double hottest, double coldest, WeekPlan plan) {
    Goals goals = plan.floor.goals;
    // The hours until sets are whole are mostly the hours a set takes at best: no part of the
    // whole.
    long sets = goals.setMinute() * plan.term(Tally.SET_MIN);
    double all = Math.max(1, plan.weighed() - sets);
    double[][] terms = {
      {goals.runMinute(), plan.term(Tally.RUN), 0.3 * dwell, SMALLEST},
      {goals.lateLot(), plan.term(Tally.LATE_LOTS), THING_HOT, THING_COLD},
      {goals.lateKit(), plan.term(Tally.LATE_KITS), THING_HOT, THING_COLD},
      {goals.lateMinute(), plan.term(Tally.LATE_MIN), dwell, SMALLEST},
      {goals.kitMinute(), plan.term(Tally.KIT_MIN), dwell, SMALLEST},
      {goals.setMinute(), 0, dwell, SMALLEST},
      {goals.settingCost(), plan.term(Tally.SETTING_COST), 2, SMALLEST},
      {goals.settingMinute(), plan.term(Tally.SETTING_MIN), 2, SMALLEST},
      {goals.colourCost(), plan.term(Tally.COLOUR_COST), 2, SMALLEST},
      {goals.load(), plan.term(Tally.LOADS), 1, SMALLEST},
      {goals.trip(), plan.term(Tally.TRIPS), 1, SMALLEST},
      {goals.moved(), plan.term(Tally.MOVED), 1, SMALLEST},
    };
    Stretch[] stretches =
        Arrays.stream(terms)
            .filter(term -> term[0] > 0)
            .map(
                term ->
                    new Stretch(
                        Math.log(term[0] * term[2]),
                        Math.log(term[0] * term[3]),
                        BUSY + WHOLE * Math.min(1, term[0] * term[1] / all)))
            .toArray(Stretch[]::new);
    return over(stretches, Math.log(hottest), Math.log(coldest));
  }

  private static Fall over(Stretch[] stretches, double hottest, double coldest) {
    double[] edges =
        DoubleStream.concat(
                DoubleStream.of(hottest, coldest),
                Arrays.stream(stretches)
                    .flatMapToDouble(s -> DoubleStream.of(s.hot, s.cold))
                    .filter(edge -> edge < hottest && edge > coldest))
            .sorted()
            .toArray();
    for (int k = 0; k < edges.length / 2; k++) {
      double other = edges[edges.length - 1 - k];
      edges[edges.length - 1 - k] = edges[k];
      edges[k] = other;
    }
    double[] way = new double[edges.length];
    for (int k = 1; k < edges.length; k++) {
      double middle = (edges[k] + edges[k - 1]) / 2;
      double slow = IDLE;
      for (Stretch stretch : stretches) {
        if (middle < stretch.hot && middle > stretch.cold) {
          slow += stretch.slow;
        }
      }
      way[k] = way[k - 1] + slow * (edges[k - 1] - edges[k]);
    }
    return new Fall(edges, way);
  }

  /** The temperature when that part of the way from a temperature to the coldest is behind. */
  double temperature(double from, double part) {
    double begin = wayAt(Math.log(from));
    double here = begin + Math.min(1, part) * (way[way.length - 1] - begin);
    int k = 1;
    while (k < way.length - 1 && way[k] < here) {
      k++;
    }
    double within = way[k] > way[k - 1] ? (here - way[k - 1]) / (way[k] - way[k - 1]) : 1;
    return Math.exp(edges[k - 1] + Math.min(1, within) * (edges[k] - edges[k - 1]));
  }

  private double wayAt(double edge) {
    int k = 1;
    while (k < edges.length - 1 && edges[k] > edge) {
      k++;
    }
    double within = edges[k - 1] > edges[k] ? (edges[k - 1] - edge) / (edges[k - 1] - edges[k]) : 0;
    return way[k - 1] + Math.max(0, Math.min(1, within)) * (way[k] - way[k - 1]);
  }
}
