package spangle.part;

import spangle.measure.Box;

/**
 * A part bent from one flat blank: area and mass are the blank's, the envelope is the folded one.
 *
 * @param netAreaMm2 area of the flat blank less its holes
 * @param cutEdgeMm length of all cuts: outline and holes
 * @param thicknessMm sheet thickness
 * @param bends number of bends
 * @param foldedMm size after bending
 */
public record FoldedBlank(
    double netAreaMm2, double cutEdgeMm, double thicknessMm, int bends, Box foldedMm)
    implements Shape {
  /** Checks the figures. */
  public FoldedBlank {
    Require.positive(netAreaMm2, "blank area in mm2");
    Require.positive(cutEdgeMm, "cut edge in mm");
    Require.length(thicknessMm, "thickness");
    Require.notNegative(bends, "number of bends");
  }

  /** A rectangular blank of known flat size. */
  public static FoldedBlank rectangle(
      double blankLengthMm, double blankWidthMm, double thicknessMm, int bends, Box foldedMm) {
    Require.length(blankLengthMm, "blank length");
    Require.length(blankWidthMm, "blank width");
    return new FoldedBlank(
        blankLengthMm * blankWidthMm,
        2 * (blankLengthMm + blankWidthMm),
        thicknessMm,
        bends,
        foldedMm);
  }

  /** An angle by its outside legs, one square bend with inside radius equal to the thickness. */
  public static FoldedBlank angle(
      double legMm, double otherLegMm, double lengthMm, double thicknessMm) {
    legs(thicknessMm, legMm, otherLegMm);
    double widthMm = legMm + otherLegMm + BendAllowance.squareBendMm(thicknessMm);
    return rectangle(lengthMm, widthMm, thicknessMm, 1, new Box(lengthMm, legMm, otherLegMm));
  }

  /** A channel by its outside web and flanges, two square bends as in {@link #angle}. */
  public static FoldedBlank channel(
      double webMm, double flangeMm, double lengthMm, double thicknessMm) {
    legs(thicknessMm, webMm / 2, flangeMm);
    double widthMm = webMm + 2 * flangeMm + 2 * BendAllowance.squareBendMm(thicknessMm);
    return rectangle(lengthMm, widthMm, thicknessMm, 2, new Box(lengthMm, webMm, flangeMm));
  }

  /**
   * A tray: a floor with four sides turned up, corners notched out of the blank and left open, four
   * square bends as in {@link #angle}.
   */
  public static FoldedBlank tray(
      double lengthMm, double widthMm, double heightMm, double thicknessMm) {
    legs(thicknessMm, Math.min(lengthMm, widthMm) / 2, heightMm);
    double sideMm = heightMm + BendAllowance.squareBendMm(thicknessMm);
    return new FoldedBlank(
        lengthMm * widthMm + 2 * sideMm * (lengthMm + widthMm),
        2 * (lengthMm + widthMm) + 8 * sideMm,
        thicknessMm,
        4,
        new Box(lengthMm, widthMm, heightMm));
  }

  @Override
  public FoldedBlank withLengthsTimes(double factor) {
    return new FoldedBlank(
        netAreaMm2 * factor * factor,
        cutEdgeMm * factor,
        thicknessMm,
        bends,
        Require.times(foldedMm, factor));
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    return Skin.sheet(netAreaMm2, cutEdgeMm, thicknessMm)
        .measured(
            densityKgM3,
            edges,
            foldedMm,
            thicknessMm,
            0,
            HollowKind.NONE,
            "two faces of a blank of " + Skin.mm2(netAreaMm2));
  }

  private static void legs(double thicknessMm, double legMm, double otherLegMm) {
    Require.length(legMm, "leg");
    Require.length(otherLegMm, "leg");
    Require.length(thicknessMm, "thickness");
    double shorter = Math.min(legMm, otherLegMm);
    // Radius and thickness of the bend must lie within the leg.
    if (shorter < 2 * thicknessMm) {
      throw new ShapeException(
          "leg",
          shorter,
          "at least twice the thickness, " + 2 * thicknessMm + " mm",
          "check the sizes, they are outside sizes");
    }
  }
}
