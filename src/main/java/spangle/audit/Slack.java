package spangle.audit;

/** Room for rounding in sums of decimals; far below anything a scale or a tape can tell. */
final class Slack {
  private static final double RELATIVE = 1e-9;

  private Slack() {}

  /** True when the value is above the limit by more than rounding can explain. */
  static boolean over(double value, double limit) {
    return !(value <= limit + RELATIVE * Math.max(1, Math.abs(limit)));
  }
}
