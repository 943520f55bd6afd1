package spangle.fit.vent;

import java.util.OptionalDouble;

/**
 * A sheet box open at one of its largest faces, with returns folded inward all round the opening.
 * It hangs with the opening upright, its longest side at an angle above level: behind the returns
 * zinc stays in the lowest corner and air in the highest.
 *
 * @param longMm longer outside side of the opening's face, whose angle is given
 * @param highMm the other outside side of that face
 * @param deepMm outside size square to that face
 * @param returnMm outside width of the returns
 * @param sheetMm sheet thickness
 * @param tiltDeg angle of the longer side above level, 0 to 90
 */
public record OpenFront(
    double longMm, double highMm, double deepMm, double returnMm, double sheetMm, double tiltDeg)
    implements Hollow {
  /** Mass of molten zinc by volume at 450 C, kg per litre (liquid 6.59 - 0.00097 x (450 - 419)). */
  public static final double ZINC_KG_PER_LITRE = 6.56;

  /** Checks the sizes against each other. */
  public OpenFront {
    Hollow.positive(sheetMm, "sheet thickness");
    if (!(deepMm > 2 * sheetMm && longMm >= highMm)) {
      throw new IllegalArgumentException(
          "a box of " + longMm + " x " + highMm + " x " + deepMm + " mm has no space inside");
    }
    if (!(returnMm > sheetMm)) {
      throw new IllegalArgumentException(
          "a return of " + Text.mm(returnMm) + " is no wider than the sheet, so nothing is folded");
    }
    if (!(2 * returnMm < highMm)) {
      throw new IllegalArgumentException(
          "returns of "
              + Text.mm(returnMm)
              + " close a front "
              + Text.mm(highMm)
              + " high: ask as a closed box");
    }
    if (!(tiltDeg >= 0 && tiltDeg <= 90)) {
      throw new IllegalArgumentException("a tilt must be 0 to 90 degrees, not " + tiltDeg);
    }
  }

  /** Width of the gutter behind a return, inside the wall, in mm. */
  public double lipMm() {
    return returnMm - sheetMm;
  }

  /**
   * Space behind the returns below the lowest point of the opening, in mm3: what zinc stays without
   * a drain, and as much air above its highest point without a vent. The lowest point of the
   * opening stands lip x (sin a + cos a) above the corner; what lies under that level is a
   * triangle, cut off where it would reach past the far ends of the walls.
   */
  public double trappedMm3() {
    double sine = Math.sin(Math.toRadians(tiltDeg));
    double cosine = Math.cos(Math.toRadians(tiltDeg));
    double along = longMm - 2 * sheetMm;
    double up = highMm - 2 * sheetMm;
    double level = lipMm() * (sine + cosine);
    return sectionMm2(level, along, up, sine, cosine) * (deepMm - 2 * sheetMm);
  }

  private static double sectionMm2(
      double level, double along, double up, double sine, double cosine) {
    if (along * sine < 1e-9) {
      return level * along;
    }
    if (up * cosine < 1e-9) {
      return level * up;
    }
    double pastAlong = Math.max(0, level - along * sine);
    double pastUp = Math.max(0, level - up * cosine);
    return (level * level - pastAlong * pastAlong - pastUp * pastUp) / (2 * sine * cosine);
  }

  @Override
  public OptionalDouble wallMm() {
    return OptionalDouble.of(sheetMm);
  }

  @Override
  public String scope() {
    return "at each return corner named";
  }

  @Override
  public String words() {
    return "box open at the front, "
        + Text.mm(longMm)
        + " x "
        + Text.mm(highMm)
        + " x "
        + Text.mm(deepMm)
        + ", returns of "
        + Text.mm(returnMm);
  }
}
