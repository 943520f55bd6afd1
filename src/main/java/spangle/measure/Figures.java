package spangle.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same on every machine: a point for decimals, no grouping, never -0. */
public final class Figures {
  private Figures() {}

  /** Fixed number of decimals, half up: {@code fixed(2.345, 2)} is {@code 2.35}. */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    return positiveZero(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP))
        .toPlainString();
  }

  /** At most so many decimals, no trailing zeros: {@code upTo(12.50, 2)} is {@code 12.5}. */
  public static String upTo(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    return trimmed(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  /** So many significant figures, no trailing zeros, never an exponent. */
  public static String significant(double value, int figures) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    return trimmed(BigDecimal.valueOf(value).round(new MathContext(figures, RoundingMode.HALF_UP)));
  }

  /** The value rounded to so many decimals, for data that are written out. */
  public static double rounded(double value, int decimals) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue() + 0.0
        : value;
  }

  private static String trimmed(BigDecimal value) {
    return positiveZero(value).stripTrailingZeros().toPlainString();
  }

  private static BigDecimal positiveZero(BigDecimal value) {
    return value.signum() == 0 ? value.abs() : value;
  }
}
