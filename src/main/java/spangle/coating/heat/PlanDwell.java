package spangle.coating.heat;

/**
 * How long one part may stay in an oven at one setting, as a plan must take it: the least from the
 * slower of the calculated and the measured heat-up, the most from the faster, because parts that
 * see one another, bare zinc and nested work warm more slowly than the model says. The clock starts
 * when the oven air is back at its setting.
 *
 * @param ovenC oven setting
 * @param slowHeatUpMin heat-up by the slower estimate, minutes; infinite when never reached
 * @param fastHeatUpMin heat-up by the faster estimate
 * @param minMin least dwell, minutes; infinite when it cannot cure
 * @param maxMin most dwell, minutes
 * @param metalCAtMin metal temperature at the least dwell
 * @param limitedByHeat true when the metal's temperature, not its time, sets the most
 */
public record PlanDwell(
    double ovenC,
    double slowHeatUpMin,
    double fastHeatUpMin,
    double minMin,
    double maxMin,
    double metalCAtMin,
    boolean limitedByHeat) {
  private static final double ROUNDING = 1e-9;

  /** A part in the usual batch oven with coated work. */
  public static PlanDwell of(
      HeatedPart part, CureWindow window, double startC, double ovenC, HeatUpTable table) {
    return of(part, ConvectionRadiation.usual(), window, startC, ovenC, table);
  }

  /**
   * The bounds of one part.
   *
   * @param part metal, thickness, faces
   * @param transfer how this oven gives heat to this surface
   * @param window what its coating needs and bears
   * @param startC metal temperature when it goes in
   * @param ovenC oven setting
   * @param table the shop's measured heat-up, or {@link HeatUpTable#RULE_OF_THUMB}
   */
  public static PlanDwell of(
      HeatedPart part,
      HeatTransfer transfer,
      CureWindow window,
      double startC,
      double ovenC,
      HeatUpTable table) {
    HeatPath model = HeatPath.of(part, transfer, startC, ovenC);
    double calculated = model.minutesTo(window.lowestC());
    double measured = table.minutes(part);
    CureRun slow =
        CureRun.of(model.through(window.lowestC(), Math.max(calculated, measured)), window);
    CureRun fast =
        CureRun.of(model.through(window.lowestC(), Math.min(calculated, measured)), window);
    return new PlanDwell(
        ovenC,
        slow.heatUpMin(),
        fast.heatUpMin(),
        slow.minDwellMin(),
        fast.maxDwellMin(),
        slow.metalCAtMinDwell(),
        fast.limitedByHeat());
  }

  /** Whether some whole number of minutes both cures and does not overbake. */
  public boolean cures() {
    return Double.isFinite(minMin) && wholeMin() <= wholeMax();
  }

  /**
   * Least whole minutes.
   *
   * @throws IllegalStateException when the part never cures at this setting
   */
  public int wholeMin() {
    if (!Double.isFinite(minMin)) {
      throw new IllegalStateException("no dwell cures this part at " + ovenC + " C");
    }
    return (int) Math.ceil(minMin - ROUNDING);
  }

  /** Most whole minutes. */
  public int wholeMax() {
    return (int) Math.floor(Math.min(maxMin, Integer.MAX_VALUE) + ROUNDING);
  }
}
