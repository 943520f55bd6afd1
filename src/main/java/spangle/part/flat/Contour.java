package spangle.part.flat;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed line. Small gaps between one curve's end and the next one's start are bridged straight.
 *
 * @param curves its curves in order
 * @param label what and where its first curve is
 */
public record Contour(List<Curve> curves, String label) {
  /** Copies the list. */
  public Contour {
    curves = List.copyOf(curves);
  }

  /** Area inside, mm2: the polygon of the joints and what the curves add to its sides. */
  public double areaMm2() {
    return Math.abs(signedAreaMm2());
  }

  private double signedAreaMm2() {
    Point origin = curves.get(0).start();
    double area = 0;
    Point at = origin;
    for (Curve curve : curves) {
      Point start = curve.start();
      Point end = curve.end();
      area += at.minus(origin).cross(start.minus(origin)) / 2;
      area += start.minus(origin).cross(end.minus(origin)) / 2 + curve.sliverMm2();
      at = end;
    }
    return area;
  }

  /** Length of the line, mm. */
  public double lengthMm() {
    double length = 0;
    Point at = curves.get(curves.size() - 1).end();
    for (Curve curve : curves) {
      length += at.distance(curve.start()) + curve.lengthMm();
      at = curve.end();
    }
    return length;
  }

  /** The smallest upright rectangle around it. */
  public Extent extent() {
    Extent extent = curves.get(0).extent();
    for (Curve curve : curves) {
      extent = extent.with(curve.extent());
    }
    return extent;
  }

  /** The contour moved, turned, mirrored or scaled. */
  public Contour transformed(Affine affine) {
    List<Curve> moved = new ArrayList<>(curves.size());
    for (Curve curve : curves) {
      moved.add(curve.transformed(affine));
    }
    return new Contour(moved, label);
  }

  /**
   * Points on it, straight between them, the first again at the end. Where one curve ends and the
   * next begins is one point: written to a few decimals they lie a hair apart, and an arc that
   * leaves a line smoothly would seem to run back along it.
   */
  public List<Point> flattened(double toleranceMm) {
    double together = toleranceMm / 2;
    List<Point> points = new ArrayList<>();
    Point first = curves.get(0).start();
    points.add(first);
    for (Curve curve : curves) {
      if (curve.start().distance(points.get(points.size() - 1)) > together) {
        points.add(curve.start());
      }
      curve.flatten(toleranceMm, points);
    }
    int last = points.size() - 1;
    if (last > 0 && points.get(last).distance(first) <= together) {
      points.set(last, first);
    } else {
      points.add(first);
    }
    return points;
  }
}
