package spangle.intake.week;

/**
 * Air the shop wants around work, mm; equipment profiles may ask for more.
 *
 * @param partGapMm between neighbours on a bar
 * @param rowGapMm between a piece and the row below
 * @param ovenWallMm between work and oven wall
 * @param doorMm on each side of a door
 */
public record Clearances(double partGapMm, double rowGapMm, double ovenWallMm, double doorMm) {
  /** Usual distances (common practice). */
  public static final Clearances USUAL = new Clearances(60, 80, 100, 50);
}
