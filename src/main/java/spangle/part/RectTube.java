package spangle.part;

import spangle.measure.Box;

/**
 * A square or rectangular tube with sharp corners, open at both ends. Rolled sections with their
 * round corners are {@link Section}s.
 *
 * @param widthMm outside width
 * @param heightMm outside height
 * @param lengthMm length
 * @param wallMm wall thickness
 */
public record RectTube(double widthMm, double heightMm, double lengthMm, double wallMm)
    implements Shape {
  /** Checks the sizes. */
  public RectTube {
    Require.length(widthMm, "tube width");
    Require.length(heightMm, "tube height");
    Require.length(lengthMm, "tube length");
    Require.wall(wallMm, Math.min(widthMm, heightMm));
  }

  @Override
  public RectTube withLengthsTimes(double factor) {
    return new RectTube(widthMm * factor, heightMm * factor, lengthMm * factor, wallMm);
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    double boreWidthMm = widthMm - 2 * wallMm;
    double boreHeightMm = heightMm - 2 * wallMm;
    double outerMm = 2 * (widthMm + heightMm);
    double innerMm = 2 * (boreWidthMm + boreHeightMm);
    return TubeSkin.of(lengthMm, outerMm, innerMm, widthMm * heightMm - boreWidthMm * boreHeightMm)
        .measured(
            densityKgM3,
            edges,
            new Box(lengthMm, widthMm, heightMm),
            wallMm,
            boreWidthMm * boreHeightMm * lengthMm,
            HollowKind.OPEN,
            TubeSkin.words(lengthMm, outerMm, innerMm));
  }
}
