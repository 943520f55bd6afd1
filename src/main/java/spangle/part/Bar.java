package spangle.part;

import spangle.measure.Box;

/**
 * A solid bar, cut square at both ends.
 *
 * @param profile round, flat, square or hexagon
 * @param widthMm diameter, width, side, or size across the flats
 * @param thicknessMm thickness of a flat; the same as the width for the others
 * @param lengthMm length
 */
public record Bar(BarProfile profile, double widthMm, double thicknessMm, double lengthMm)
    implements Shape {

  /** Form of the cross-section. */
  public enum BarProfile {
    /** Round bar by diameter. */
    ROUND,
    /** Rectangular bar, square included. */
    FLAT,
    /** Hexagon by size across the flats. */
    HEXAGON
  }

  /** Checks the sizes. */
  public Bar {
    Require.length(widthMm, "bar size");
    Require.length(thicknessMm, "bar thickness");
    Require.length(lengthMm, "bar length");
    if (profile != BarProfile.FLAT && thicknessMm != widthMm) {
      throw new ShapeException(
          "bar thickness", thicknessMm, "equal to its size, " + widthMm + " mm", "give one size");
    }
  }

  /** A round bar. */
  public static Bar round(double diameterMm, double lengthMm) {
    return new Bar(BarProfile.ROUND, diameterMm, diameterMm, lengthMm);
  }

  /** A flat bar. */
  public static Bar flat(double widthMm, double thicknessMm, double lengthMm) {
    return new Bar(BarProfile.FLAT, widthMm, thicknessMm, lengthMm);
  }

  /** A square bar. */
  public static Bar square(double sideMm, double lengthMm) {
    return new Bar(BarProfile.FLAT, sideMm, sideMm, lengthMm);
  }

  /** A hexagon bar. */
  public static Bar hexagon(double acrossFlatsMm, double lengthMm) {
    return new Bar(BarProfile.HEXAGON, acrossFlatsMm, acrossFlatsMm, lengthMm);
  }

  @Override
  public Bar withLengthsTimes(double factor) {
    boolean gauged = profile == BarProfile.FLAT && thicknessMm != widthMm;
    return new Bar(
        profile, widthMm * factor, gauged ? thicknessMm : thicknessMm * factor, lengthMm * factor);
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    double outlineMm =
        switch (profile) {
          case ROUND -> Math.PI * widthMm;
          case FLAT -> 2 * (widthMm + thicknessMm);
          case HEXAGON -> 2 * Math.sqrt(3) * widthMm;
        };
    double metalMm2 =
        switch (profile) {
          case ROUND -> Math.PI * widthMm * widthMm / 4;
          case FLAT -> widthMm * thicknessMm;
          case HEXAGON -> Math.sqrt(3) / 2 * widthMm * widthMm;
        };
    double heightMm = profile == BarProfile.HEXAGON ? 2 * widthMm / Math.sqrt(3) : thicknessMm;
    return TubeSkin.of(lengthMm, outlineMm, 0, metalMm2)
        .measured(
            densityKgM3,
            edges,
            new Box(lengthMm, widthMm, heightMm),
            Math.min(widthMm, thicknessMm),
            0,
            HollowKind.NONE,
            TubeSkin.words(lengthMm, outlineMm, 0));
  }
}
