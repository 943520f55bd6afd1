package spangle.fit.gate;

import spangle.measure.Box;
import spangle.measure.Figures;

/**
 * The widest flat face a part can have: what its form tells; for a frame of hollow members their
 * walls, where the mass leaves nothing over for a sheet so wide; else two sides of the outside box.
 *
 * @param shorterMm its shorter side; 0 where no face is flat
 * @param words for people
 */
record FlatFace(double shorterMm, String words) {
  /** Steel, kg/m3 (EN 1991-1-1 gives 77 to 78.5 kN/m3; 7850 is the handbook figure). */
  private static final double KG_M3 = 7850;

  /** How much more the members may weigh than the part: rounded corners, holes, a scale. */
  private static final double OVER = 1.05;

  /**
   * @param sheetMm shorter side from which a sheet counts as wide
   */
  static FlatFace of(GateCase part, double sheetMm) {
    GateCase.Build build = part.build();
    if (build.flatMm().isPresent()) {
      double flat = build.flatMm().getAsDouble();
      return flat == 0
          ? new FlatFace(0, "no flat face")
          : new FlatFace(flat, "flat " + mm(flat) + " mm wide at most");
    }
    if (membersOnly(part, sheetMm)) {
      double side =
          build.members().stream().mapToDouble(GateCase.Member::outsideMm).max().orElse(0);
      return new FlatFace(side, "a frame of members, flat " + mm(side) + " mm wide at most");
    }
    Box box = build.envelope();
    return new FlatFace(
        box.middleMm(), "a face up to " + mm(box.longestMm()) + " x " + mm(box.middleMm()) + " mm");
  }

  /** Whether what the members leave of the mass is less than a square sheet of that side weighs. */
  private static boolean membersOnly(GateCase part, double sheetMm) {
    GateCase.Build build = part.build();
    double members = build.members().stream().mapToDouble(GateCase.Member::steelKg).sum();
    double sheet = sheetMm * sheetMm * part.steel().thinMm() / 1e9 * KG_M3;
    return members > 0 && members <= OVER * build.massKg() && build.massKg() - members < sheet;
  }

  private static String mm(double value) {
    return Figures.upTo(value, 1);
  }
}
