package spangle.part.flat;

import java.util.List;

/** A piece of a drawn line, with a direction. */
public sealed interface Curve permits Segment, Arc, Bezier {
  /** Where it begins. */
  Point start();

  /** Where it ends. */
  Point end();

  /**
   * Signed area in mm2 between the curve and the straight line from its start to its end; above
   * zero when the curve bulges to the right of that line, that is, out of a contour that runs
   * counter-clockwise. By Green's theorem: half the integral of (P - start) x dP.
   */
  double sliverMm2();

  /** Length along the curve, mm. */
  double lengthMm();

  /** The same curve run the other way. */
  Curve reversed();

  /** The curve moved, turned, mirrored or scaled. */
  Curve transformed(Affine affine);

  /** The smallest upright rectangle around it. */
  Extent extent();

  /** Adds points on the curve after its start, up to and with its end, straight between them. */
  void flatten(double toleranceMm, List<Point> points);

  /** A point about half way along. */
  Point middle();
}
