package spangle.part;

import java.util.List;
import spangle.measure.Box;

/**
 * A body with a watertight surface, as a 3-D file gives it.
 *
 * @param outerMm2 surface seen from outside
 * @param voidMm2 surface of inner spaces that no opening reaches
 * @param metalMm3 volume of metal, inner spaces taken off
 * @param voids number of inner spaces
 * @param voidMm3 volume of the inner spaces
 * @param envelopeMm outside size
 * @param corners points whose convex outlines along x, y and z are the body's; none where only the
 *     size is known
 * @param around points whose convex hull holds the body, seen from wherever; none where only the
 *     size is known
 */
public record Solid(
    double outerMm2,
    double voidMm2,
    double metalMm3,
    int voids,
    double voidMm3,
    Box envelopeMm,
    List<Folded.Corner> corners,
    List<Folded.Corner> around)
    implements Shape {
  /** Checks the figures against each other. */
  public Solid {
    corners = List.copyOf(corners);
    around = List.copyOf(around);
    Require.positive(outerMm2, "outer surface in mm2");
    Require.notNegative(voidMm2, "surface of voids in mm2");
    Require.positive(metalMm3, "metal volume in mm3");
    Require.notNegative(voids, "number of voids");
    Require.notNegative(voidMm3, "volume of voids in mm3");
  }

  /** A body of which only the outside size is known. */
  public Solid(
      double outerMm2, double voidMm2, double metalMm3, int voids, double voidMm3, Box envelopeMm) {
    this(outerMm2, voidMm2, metalMm3, voids, voidMm3, envelopeMm, List.of(), List.of());
  }

  @Override
  public Solid withLengthsTimes(double factor) {
    double square = factor * factor;
    return new Solid(
        outerMm2 * square,
        voidMm2 * square,
        metalMm3 * square * factor,
        voids,
        voidMm3 * square * factor,
        Require.times(envelopeMm, factor),
        corners.stream().map(c -> c.times(factor)).toList(),
        around.stream().map(c -> c.times(factor)).toList());
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    double thicknessMm = 2 * metalMm3 / (outerMm2 + voidMm2);
    return new Skin(outerMm2, voidMm2, 0, 0, 0, metalMm3)
        .measured(
            densityKgM3,
            edges,
            envelopeMm,
            thicknessMm,
            voidMm3,
            voids > 0 ? HollowKind.CLOSED : HollowKind.NONE,
            "outside "
                + Skin.mm2(outerMm2)
                + (voids > 0 ? " + " + voids + " closed inner space(s) " + Skin.mm2(voidMm2) : ""));
  }
}
