package spangle.measure;

/** Checks a number against its limits and complains in words. */
public final class Limits {
  private Limits() {}

  /**
   * The value, when it is finite and above the limit.
   *
   * @param noun what it is, with its article: {@code a film thickness}
   * @param unit symbol for the message, may be empty
   * @throws MeasureException otherwise
   */
  public static double above(double value, double limit, String noun, String unit) {
    if (!(value > limit) || Double.isInfinite(value)) {
      throw new MeasureException(
          withUnit(value, unit), noun, "it must be above " + withUnit(limit, unit));
    }
    return value;
  }

  /**
   * The value, when it lies between the limits, ends included.
   *
   * @throws MeasureException otherwise
   */
  public static double between(double value, double min, double max, String noun, String unit) {
    if (!(value >= min && value <= max)) {
      throw new MeasureException(
          withUnit(value, unit),
          noun,
          "it must lie from " + withUnit(min, unit) + " to " + withUnit(max, unit));
    }
    return value;
  }

  /**
   * The value, when it is above zero and not above one: a share such as a yield.
   *
   * @throws MeasureException otherwise
   */
  public static double share(double value, String noun) {
    if (!(value > 0 && value <= 1)) {
      throw new MeasureException(
          Figures.significant(value, 6), noun, "it must be above 0 and at most 1 (60 % is 0.6)");
    }
    return value;
  }

  private static String withUnit(double value, String unit) {
    String number = Figures.significant(value, 6);
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
