package spangle.part;

import spangle.measure.Box;

/**
 * A round tube, open at both ends.
 *
 * @param diameterMm outside diameter
 * @param lengthMm length
 * @param wallMm wall thickness
 */
public record RoundTube(double diameterMm, double lengthMm, double wallMm) implements Shape {
  /** Checks the sizes. */
  public RoundTube {
    Require.length(diameterMm, "tube diameter");
    Require.length(lengthMm, "tube length");
    Require.wall(wallMm, diameterMm);
  }

  @Override
  public RoundTube withLengthsTimes(double factor) {
    return new RoundTube(diameterMm * factor, lengthMm * factor, wallMm);
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    double boreMm = diameterMm - 2 * wallMm;
    double boreMm2 = Math.PI * boreMm * boreMm / 4;
    return TubeSkin.of(
            lengthMm,
            Math.PI * diameterMm,
            Math.PI * boreMm,
            Math.PI * diameterMm * diameterMm / 4 - boreMm2)
        .measured(
            densityKgM3,
            edges,
            new Box(lengthMm, diameterMm, diameterMm),
            wallMm,
            boreMm2 * lengthMm,
            HollowKind.OPEN,
            TubeSkin.words(lengthMm, Math.PI * diameterMm, Math.PI * boreMm));
  }
}
