package spangle.part.flat;

import java.util.List;

/**
 * A circle, an ellipse or a piece of one: P(t) = centre + u cos t + v sin t. Any affine picture of
 * an arc is again such an arc, so a circle in a squeezed block stays exact.
 *
 * @param centre centre
 * @param u half axis at t = 0
 * @param v half axis at t = 90 degrees, conjugate to {@code u}
 * @param from t at the start, radians
 * @param sweep how far t runs, radians; below zero the other way; a whole turn is 2 pi
 */
public record Arc(Point centre, Point u, Point v, double from, double sweep) implements Curve {
  private static final int MOST_PIECES = 2_000;

  /** A piece of a circle. */
  public static Arc circle(Point centre, double radius, double from, double sweep) {
    return new Arc(centre, new Point(radius, 0), new Point(0, radius), from, sweep);
  }

  /** A whole circle, counter-clockwise. */
  public static Arc circle(Point centre, double radius) {
    return circle(centre, radius, 0, 2 * Math.PI);
  }

  /**
   * From one point to another with a bulge, the tangent of a quarter of the angle turned; above
   * zero counter-clockwise. Bulge 1 is a half circle.
   */
  public static Curve bulge(Point start, Point end, double bulge) {
    double chord = start.distance(end);
    if (bulge == 0 || chord == 0) {
      return new Segment(start, end);
    }
    // Apothem over the half chord is (1 - b2) / 2b; the centre lies that far left of the chord.
    Point half = end.minus(start).times(0.5);
    double apothem = (1 - bulge * bulge) / (2 * bulge);
    Point centre = start.middle(end).plus(new Point(-half.y(), half.x()).times(apothem));
    double radius = chord / 2 * (1 + bulge * bulge) / (2 * Math.abs(bulge));
    double from = Math.atan2(start.y() - centre.y(), start.x() - centre.x());
    Arc arc = circle(centre, radius, from, 4 * Math.atan(bulge));
    // A bulge next to nothing has its centre in another world: the line is as good.
    return radius > chord * 1e8 || !centre.finite() ? new Segment(start, end) : arc;
  }

  private Point at(double t) {
    double cos = Math.cos(t);
    double sin = Math.sin(t);
    return new Point(
        centre.x() + u.x() * cos + v.x() * sin, centre.y() + u.y() * cos + v.y() * sin);
  }

  /** Whether it runs once round. */
  public boolean whole() {
    return Math.abs(sweep) >= 2 * Math.PI - 1e-9;
  }

  @Override
  public Point start() {
    return at(from);
  }

  @Override
  public Point end() {
    return whole() ? at(from) : at(from + sweep);
  }

  @Override
  public double sliverMm2() {
    Point a = start().minus(centre);
    Point b = end().minus(centre);
    return (u.cross(v) * sweep - a.cross(b)) / 2;
  }

  private boolean round() {
    double size = Math.max(u.length(), v.length());
    return Math.abs(u.length() - v.length()) <= 1e-12 * size
        && Math.abs(u.dot(v)) <= 1e-12 * size * size;
  }

  @Override
  public double lengthMm() {
    if (round()) {
      return u.length() * Math.abs(sweep);
    }
    return Math.abs(
        Quadrature.integral(
            t -> v.times(Math.cos(t)).minus(u.times(Math.sin(t))).length(), from, from + sweep));
  }

  @Override
  public Arc reversed() {
    return new Arc(centre, u, v, from + sweep, -sweep);
  }

  @Override
  public Arc transformed(Affine affine) {
    return new Arc(affine.point(centre), affine.vector(u), affine.vector(v), from, sweep);
  }

  @Override
  public Extent extent() {
    Extent extent = Extent.of(start()).with(end());
    for (double t : new double[] {Math.atan2(v.x(), u.x()), Math.atan2(v.y(), u.y())}) {
      for (double turn : new double[] {t, t + Math.PI}) {
        if (passes(turn)) {
          extent = extent.with(at(turn));
        }
      }
    }
    return extent;
  }

  private boolean passes(double t) {
    double low = Math.min(from, from + sweep);
    double after = (t - low) % (2 * Math.PI);
    double positive = after < 0 ? after + 2 * Math.PI : after;
    return positive <= Math.abs(sweep);
  }

  @Override
  public void flatten(double toleranceMm, List<Point> points) {
    double radius = Math.max(u.length(), v.length());
    double step = 2 * Math.acos(Math.max(0, 1 - toleranceMm / Math.max(radius, toleranceMm)));
    double least = Math.abs(sweep) / (Math.PI / 6);
    int pieces = (int) Math.ceil(Math.max(least, Math.min(Math.abs(sweep) / step, MOST_PIECES)));
    int count = Math.max(2, pieces);
    for (int i = 1; i < count; i++) {
      points.add(at(from + sweep * i / count));
    }
    points.add(end());
  }

  @Override
  public Point middle() {
    return at(from + sweep / 2);
  }
}
