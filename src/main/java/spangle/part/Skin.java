package spangle.part;

import spangle.measure.Box;
import spangle.measure.Figures;

/**
 * Sums up a piece made of sheet or wall: outer and inner face in mm2, cut edge, metal volume. Keeps
 * the area rule in one place.
 */
record Skin(
    double outerMm2,
    double innerMm2,
    double edgeMm2,
    double outerEdgeMm2,
    double cutEdgeMm,
    double metalMm3) {

  private static final double MM2_PER_M2 = 1e6;
  private static final double MM3_PER_M3 = 1e9;

  /** A sheet: two equal faces, cut edge all round, every cut edge seen from the painted side. */
  static Skin sheet(double faceMm2, double cutEdgeMm, double thicknessMm) {
    double edgeMm2 = cutEdgeMm * thicknessMm;
    return new Skin(faceMm2, faceMm2, edgeMm2, edgeMm2, cutEdgeMm, faceMm2 * thicknessMm);
  }

  Measured measured(
      double densityKgM3,
      Edges edges,
      Box envelopeMm,
      double thicknessMm,
      double enclosedMm3,
      HollowKind hollow,
      String faces) {
    Require.density(densityKgM3);
    boolean counted = edges == Edges.COUNTED;
    double areaM2 = (outerMm2 + innerMm2 + (counted ? edgeMm2 : 0)) / MM2_PER_M2;
    double oneSideM2 = (outerMm2 + (counted ? outerEdgeMm2 : 0)) / MM2_PER_M2;
    double massKg = metalMm3 / MM3_PER_M3 * densityKgM3;
    return new Measured(
        areaM2,
        oneSideM2,
        cutEdgeMm / 1000,
        massKg,
        envelopeMm,
        thicknessMm,
        enclosedMm3 / 1e6,
        hollow,
        faces + edgeWords(counted) + " = " + m2(areaM2) + "; " + massWords(densityKgM3, massKg));
  }

  private String edgeWords(boolean counted) {
    if (edgeMm2 == 0) {
      return "";
    }
    return counted
        ? " + cut edges " + m2(edgeMm2 / MM2_PER_M2)
        : " (cut edges of " + m2(edgeMm2 / MM2_PER_M2) + " left out)";
  }

  private String massWords(double densityKgM3, double massKg) {
    return "metal "
        + Figures.significant(metalMm3 / 1e6, 5)
        + " dm3 x "
        + Figures.upTo(densityKgM3, 1)
        + " kg/m3 = "
        + Figures.significant(massKg, 5)
        + " kg";
  }

  static String m2(double areaM2) {
    return Figures.significant(areaM2, 5) + " m2";
  }

  static String mm2(double areaMm2) {
    return m2(areaMm2 / MM2_PER_M2);
  }
}
