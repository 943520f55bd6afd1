package spangle.coating.heat;

/** Time to cool before the next hand or gun touches the part. */
public final class Cooling {
  /**
   * Powder goes on metal below this: hotter melts it as it lands (published trade guide, 100 F).
   */
  public static final double BEFORE_POWDER_C = 38;

  /** Cool enough to unload: film hard, hands safe in gloves (common practice, 50-60 C). */
  public static final double BEFORE_HANDLING_C = 50;

  /** Still air of a hall, convection and radiation together, W/m2 K (common practice). */
  public static final double STILL_AIR_U_WM2K = 15;

  /** Fans on the work halve the time (common practice). */
  public static final double FAN_U_WM2K = 30;

  private Cooling() {}

  /**
   * Minutes for a part to cool; infinite when the air is as warm as the target.
   *
   * @param part metal, thickness, faces
   * @param fromC metal temperature now
   * @param toC wanted metal temperature
   * @param airC air around it
   * @param uWM2K {@link #STILL_AIR_U_WM2K} or {@link #FAN_U_WM2K}
   */
  public static double minutes(
      HeatedPart part, double fromC, double toC, double airC, double uWM2K) {
    if (fromC <= toC) {
      return 0;
    }
    return airC >= toC
        ? Double.POSITIVE_INFINITY
        : HeatPath.of(part, new ConstantU(uWM2K), fromC, airC).minutesTo(toC);
  }
}
