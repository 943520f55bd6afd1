package spangle.measure;

import java.util.Optional;

/**
 * A closed range of one quantity, both ends included; the unit is the holder's. The upper end may
 * be infinite.
 *
 * @param min lower end
 * @param max upper end, not below {@code min}
 */
public record Interval(double min, double max) {
  /** Checks that the ends are numbers in order. */
  public Interval {
    if (!(min <= max)) {
      throw new MeasureException(
          min + " to " + max, "a range", "give the smaller number first, and numbers only");
    }
  }

  /** Width of the range, in its own unit. */
  public double width() {
    return max - min;
  }

  /** Middle of the range. */
  public double middle() {
    return min + (max - min) / 2;
  }

  /** Whether a value lies inside, ends included. */
  public boolean contains(double value) {
    return value >= min && value <= max;
  }

  /** What both ranges share; empty when they do not touch. */
  public Optional<Interval> intersect(Interval other) {
    double lower = Math.max(min, other.min);
    double upper = Math.min(max, other.max);
    return lower <= upper ? Optional.of(new Interval(lower, upper)) : Optional.empty();
  }

  /** The range moved by an amount. */
  public Interval shift(double by) {
    return new Interval(min + by, max + by);
  }
}
