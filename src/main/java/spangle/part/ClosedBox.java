package spangle.part;

import spangle.measure.Box;

/**
 * A box of six sheet faces, each taken at its outside size. Its edges are bent or welded, so it has
 * no cut edge; its inside counts as wetted, and as a closed space.
 *
 * @param lengthMm outside length
 * @param widthMm outside width
 * @param heightMm outside height
 * @param thicknessMm sheet thickness
 */
public record ClosedBox(double lengthMm, double widthMm, double heightMm, double thicknessMm)
    implements Shape {
  /** Checks the sizes. */
  public ClosedBox {
    Require.length(lengthMm, "box length");
    Require.length(widthMm, "box width");
    Require.length(heightMm, "box height");
    Require.wall(thicknessMm, Math.min(lengthMm, Math.min(widthMm, heightMm)));
  }

  @Override
  public ClosedBox withLengthsTimes(double factor) {
    return new ClosedBox(lengthMm * factor, widthMm * factor, heightMm * factor, thicknessMm);
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    double facesMm2 = 2 * (lengthMm * widthMm + lengthMm * heightMm + widthMm * heightMm);
    return new Skin(facesMm2, facesMm2, 0, 0, 0, facesMm2 * thicknessMm)
        .measured(
            densityKgM3,
            edges,
            new Box(lengthMm, widthMm, heightMm),
            thicknessMm,
            insideMm3(),
            HollowKind.CLOSED,
            "six faces of together " + Skin.mm2(facesMm2) + ", both sides");
  }

  private double insideMm3() {
    return (lengthMm - 2 * thicknessMm)
        * (widthMm - 2 * thicknessMm)
        * (heightMm - 2 * thicknessMm);
  }
}
