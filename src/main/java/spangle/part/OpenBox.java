package spangle.part;

import spangle.measure.Box;

/**
 * A box of five sheet faces, each taken at its outside size; one face is missing and the rim around
 * it is a cut edge.
 *
 * @param lengthMm outside length
 * @param widthMm outside width
 * @param heightMm outside height
 * @param thicknessMm sheet thickness
 * @param open the face that is missing
 */
public record OpenBox(
    double lengthMm, double widthMm, double heightMm, double thicknessMm, OpenFace open)
    implements Shape {

  /** Which face of a box is missing. */
  public enum OpenFace {
    /** Length by width. */
    LENGTH_WIDTH,
    /** Length by height. */
    LENGTH_HEIGHT,
    /** Width by height. */
    WIDTH_HEIGHT
  }

  /** Checks the sizes. */
  public OpenBox {
    Require.length(lengthMm, "box length");
    Require.length(widthMm, "box width");
    Require.length(heightMm, "box height");
    Require.wall(thicknessMm, Math.min(lengthMm, Math.min(widthMm, heightMm)));
  }

  /** A box open at its front: one of its largest faces is missing. */
  public static OpenBox openFront(
      double lengthMm, double widthMm, double heightMm, double thicknessMm) {
    double smallest = Math.min(lengthMm, Math.min(widthMm, heightMm));
    OpenFace face =
        smallest == heightMm
            ? OpenFace.LENGTH_WIDTH
            : smallest == widthMm ? OpenFace.LENGTH_HEIGHT : OpenFace.WIDTH_HEIGHT;
    return new OpenBox(lengthMm, widthMm, heightMm, thicknessMm, face);
  }

  @Override
  public OpenBox withLengthsTimes(double factor) {
    return new OpenBox(lengthMm * factor, widthMm * factor, heightMm * factor, thicknessMm, open);
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    double sixMm2 = 2 * (lengthMm * widthMm + lengthMm * heightMm + widthMm * heightMm);
    double facesMm2 = sixMm2 - acrossMm() * alongMm();
    double rimMm = 2 * (acrossMm() + alongMm());
    double rimMm2 = rimMm * thicknessMm;
    double insideMm3 =
        (acrossMm() - 2 * thicknessMm) * (alongMm() - 2 * thicknessMm) * (depthMm() - thicknessMm);
    return new Skin(facesMm2, facesMm2, rimMm2, rimMm2, rimMm, facesMm2 * thicknessMm)
        .measured(
            densityKgM3,
            edges,
            new Box(lengthMm, widthMm, heightMm),
            thicknessMm,
            insideMm3,
            HollowKind.OPEN,
            "five faces of together " + Skin.mm2(facesMm2) + ", both sides");
  }

  private double acrossMm() {
    return open == OpenFace.WIDTH_HEIGHT ? widthMm : lengthMm;
  }

  private double alongMm() {
    return open == OpenFace.LENGTH_WIDTH ? widthMm : heightMm;
  }

  private double depthMm() {
    return switch (open) {
      case LENGTH_WIDTH -> heightMm;
      case LENGTH_HEIGHT -> widthMm;
      case WIDTH_HEIGHT -> lengthMm;
    };
  }
}
