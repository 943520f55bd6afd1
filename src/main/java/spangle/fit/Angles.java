package spangle.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.measure.Interval;

/** Degrees, exact at the right angles, and sets of angles as rising lists of closed ranges. */
final class Angles {
  /**
   * Half of the millionth of a millimetre within which equality holds; the other half is left to
   * the rounding of printed angles.
   */
  static final double SLACK_MM = 5e-7;

  private static final double SNAP_DEG = 1e-6;

  private Angles() {}

  static double cos(double deg) {
    return deg == 90 ? 0 : Math.cos(Math.toRadians(deg));
  }

  static double sin(double deg) {
    return deg == 180 ? 0 : Math.sin(Math.toRadians(deg));
  }

  static double tan(double deg) {
    return Math.tan(Math.toRadians(deg));
  }

  /** The angles both sets share. */
  static List<Interval> intersect(List<Interval> one, List<Interval> other) {
    List<Interval> shared = new ArrayList<>();
    for (Interval a : one) {
      for (Interval b : other) {
        a.intersect(b).ifPresent(shared::add);
      }
    }
    return joined(shared);
  }

  /** Sorted, overlapping and touching ranges made one. */
  static List<Interval> joined(List<Interval> ranges) {
    List<Interval> sorted = new ArrayList<>(ranges);
    sorted.sort(Comparator.comparingDouble(Interval::min));
    List<Interval> joined = new ArrayList<>();
    for (Interval range : sorted) {
      int last = joined.size() - 1;
      if (last >= 0 && range.min() <= joined.get(last).max() + SNAP_DEG) {
        Interval before = joined.get(last);
        joined.set(last, new Interval(before.min(), Math.max(before.max(), range.max())));
      } else {
        joined.add(range);
      }
    }
    return List.copyOf(joined);
  }

  /** A range inside 0 to 90 degrees, its ends drawn onto 0 and 90 where they all but touch. */
  static Interval snapped(Interval range) {
    return new Interval(snapped(range.min()), snapped(range.max()));
  }

  private static double snapped(double deg) {
    if (Math.abs(deg) < SNAP_DEG) {
      return 0;
    }
    return Math.abs(deg - 90) < SNAP_DEG ? 90 : deg;
  }
}
