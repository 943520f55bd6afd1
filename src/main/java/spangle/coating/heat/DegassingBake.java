package spangle.coating.heat;

import spangle.measure.Limits;

/**
 * The bake before powder on galvanized work that drives gas out of the zinc (ASTM D7803 and trade
 * practice): hotter than the cure, until the metal is at oven temperature, never shorter than the
 * shop's proven time. Zinc does not overbake, so there is no longest time.
 *
 * @param ovenC oven setting
 * @param heatUpMin minutes until the metal is within {@link #AT_OVEN_WITHIN_K} of the setting
 * @param minMinutes least dwell
 */
public record DegassingBake(double ovenC, double heatUpMin, double minMinutes) {
  /** Above the cure temperature (trade practice on galvanized steel). */
  public static final double ABOVE_CURE_K = 30;

  /** Least time where the shop has proven nothing shorter (trade practice). */
  public static final double UNPROVEN_MINUTES = 60;

  /** The metal counts as at oven temperature this close to it (common practice). */
  public static final double AT_OVEN_WITHIN_K = 5;

  /** Oven setting for a cure at this temperature. */
  public static double settingC(double cureC) {
    return cureC + ABOVE_CURE_K;
  }

  /**
   * The bake of one part, bare zinc on its faces.
   *
   * @param part metal and thickness
   * @param startC metal temperature when it goes in
   * @param ovenC oven setting, usually {@link #settingC}
   * @param provenMinutes the shop's proven time, {@link #UNPROVEN_MINUTES} where nothing was
   *     measured
   * @param table the shop's measured heat-up; the slower estimate counts
   */
  public static DegassingBake of(
      HeatedPart part, double startC, double ovenC, double provenMinutes, HeatUpTable table) {
    Limits.above(provenMinutes, 0, "a proven degassing time", "min");
    double calculated =
        HeatPath.of(part, ConvectionRadiation.bareMetal(), startC, ovenC)
            .minutesTo(ovenC - AT_OVEN_WITHIN_K);
    double heatUp = Math.max(calculated, table.minutes(part));
    return new DegassingBake(ovenC, heatUp, Math.max(heatUp, provenMinutes));
  }
}
