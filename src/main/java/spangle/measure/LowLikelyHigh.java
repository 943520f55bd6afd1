package spangle.measure;

import java.util.function.DoubleUnaryOperator;

/**
 * An uncertain quantity: a planning range, not limits. The unit is the holder's.
 *
 * @param low the low end
 * @param likely the value to plan with
 * @param high the high end
 */
public record LowLikelyHigh(double low, double likely, double high) {
  /** Checks that the three stand in order. */
  public LowLikelyHigh {
    if (!(low <= likely && likely <= high)) {
      throw new MeasureException(
          low + ", " + likely + ", " + high, "a planning range", "give low, likely, high in order");
    }
  }

  /** A quantity that is known. */
  public static LowLikelyHigh exactly(double value) {
    return new LowLikelyHigh(value, value, value);
  }

  /** Sum, end by end: the cautious sum, as if all were low or all were high together. */
  public LowLikelyHigh plus(LowLikelyHigh other) {
    return new LowLikelyHigh(low + other.low, likely + other.likely, high + other.high);
  }

  /** The range scaled by a factor of zero or more. */
  public LowLikelyHigh times(double factor) {
    return map(value -> value * factor);
  }

  /** The range through a function that never falls. */
  public LowLikelyHigh map(DoubleUnaryOperator rising) {
    return new LowLikelyHigh(
        rising.applyAsDouble(low), rising.applyAsDouble(likely), rising.applyAsDouble(high));
  }
}
