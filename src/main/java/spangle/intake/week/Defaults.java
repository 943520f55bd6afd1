package spangle.intake.week;

/**
 * Values that stand in where a data sheet or a measurement is silent. All are common practice, to
 * be replaced by the shop's own.
 *
 * @param powderUse share of sprayed powder that stays on the work
 * @param zincYield zinc on work / zinc bought
 * @param heatUpMinPerMm minutes of heat-up per mm of steel
 * @param washToCoatMaxMin longest wait between washing and coating, minutes
 * @param fluxToZincMaxMin longest wait between flux and zinc, minutes
 * @param zincToPowderMaxMin longest wait between zinc and powder, minutes
 * @param degasAboveCureC how far above the cure temperature galvanized work is degassed, C
 * @param degasMin least minutes of that bake
 * @param hookAreaM2 coated area of one hook, m2 (4 mm wire, 300 mm long)
 * @param shelfMonths shelf life where the data sheet says nothing
 * @param partCoolC warmest a part may enter a booth, C
 * @param startHalfRoutes whether work is galvanized or primed though the step after it finds no
 *     place in the plan and its surface has to be made ready again then
 * @param rejectAllowancePct material kept ready for rejects, per cent of the pieces ordered; none
 *     unless the shop says so
 */
public record Defaults(
    double powderUse,
    double zincYield,
    double heatUpMinPerMm,
    int washToCoatMaxMin,
    int fluxToZincMaxMin,
    int zincToPowderMaxMin,
    double degasAboveCureC,
    int degasMin,
    double hookAreaM2,
    int shelfMonths,
    double partCoolC,
    boolean startHalfRoutes,
    double rejectAllowancePct) {
  /** The built-in ones. */
  public static final Defaults BUILT_IN =
      new Defaults(0.6, 0.75, 3, 240, 120, 720, 30, 60, 0.00377, 12, 38, false, 0);
}
