package spangle.part.flat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A rational Bezier curve: control points (x w, y w) with weights w above zero. With all weights
 * equal it is a polynomial one.
 */
public final class Bezier implements Curve {
  private static final int DEEPEST_FLAT = 10;
  private static final int SAMPLES = 32;

  private final double[] wx;
  private final double[] wy;
  private final double[] w;
  private double length = Double.NaN;

  /** Takes control points in homogeneous form; the arrays become the curve's own. */
  Bezier(double[] wx, double[] wy, double[] w) {
    this.wx = wx;
    this.wy = wy;
    this.w = w;
  }

  /** A polynomial curve by its control points. */
  public static Bezier of(List<Point> control) {
    double[] x = control.stream().mapToDouble(Point::x).toArray();
    double[] y = control.stream().mapToDouble(Point::y).toArray();
    double[] weights = new double[x.length];
    Arrays.fill(weights, 1);
    return new Bezier(x, y, weights);
  }

  private record Spot(double x, double y, double dx, double dy) {
    Point point() {
      return new Point(x, y);
    }
  }

  /** Place and derivative by de Casteljau's scheme. */
  private Spot at(double t) {
    int degree = w.length - 1;
    double[] a = wx.clone();
    double[] b = wy.clone();
    double[] c = w.clone();
    double s = 1 - t;
    for (int round = degree; round > 1; round--) {
      for (int i = 0; i < round; i++) {
        a[i] = s * a[i] + t * a[i + 1];
        b[i] = s * b[i] + t * b[i + 1];
        c[i] = s * c[i] + t * c[i + 1];
      }
    }
    double weight = s * c[0] + t * c[1];
    double x = (s * a[0] + t * a[1]) / weight;
    double y = (s * b[0] + t * b[1]) / weight;
    double change = degree * (c[1] - c[0]);
    double dx = (degree * (a[1] - a[0]) - change * x) / weight;
    double dy = (degree * (b[1] - b[0]) - change * y) / weight;
    return new Spot(x, y, dx, dy);
  }

  @Override
  public Point start() {
    return new Point(wx[0] / w[0], wy[0] / w[0]);
  }

  @Override
  public Point end() {
    int last = w.length - 1;
    return new Point(wx[last] / w[last], wy[last] / w[last]);
  }

  @Override
  public double sliverMm2() {
    Point start = start();
    return Quadrature.integral(
            t -> {
              Spot spot = at(t);
              return (spot.x - start.x()) * spot.dy - (spot.y - start.y()) * spot.dx;
            },
            0,
            1)
        / 2;
  }

  /** Reckoned once: the same curve is asked many times, and by one thread only. */
  @Override
  public double lengthMm() {
    if (Double.isNaN(length)) {
      length =
          Quadrature.integral(
              t -> {
                Spot spot = at(t);
                return Math.hypot(spot.dx, spot.dy);
              },
              0,
              1);
    }
    return length;
  }

  @Override
  public Bezier reversed() {
    return new Bezier(backwards(wx), backwards(wy), backwards(w));
  }

  private static double[] backwards(double[] values) {
    double[] result = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      result[i] = values[values.length - 1 - i];
    }
    return result;
  }

  @Override
  public Bezier transformed(Affine m) {
    double[] x = new double[w.length];
    double[] y = new double[w.length];
    for (int i = 0; i < w.length; i++) {
      x[i] = m.a() * wx[i] + m.c() * wy[i] + m.e() * w[i];
      y[i] = m.b() * wx[i] + m.d() * wy[i] + m.f() * w[i];
    }
    return new Bezier(x, y, w.clone());
  }

  @Override
  public Extent extent() {
    double[] ts = new double[4];
    double[] best = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY
    };
    for (int i = 0; i <= SAMPLES; i++) {
      double t = i / (double) SAMPLES;
      Spot spot = at(t);
      for (int side = 0; side < 4; side++) {
        double reach = reach(spot, side);
        if (reach < best[side]) {
          best[side] = reach;
          ts[side] = t;
        }
      }
    }
    Extent extent = Extent.of(start()).with(end());
    for (int side = 0; side < 4; side++) {
      extent = extent.with(at(furthest(side, ts[side])).point());
    }
    return extent;
  }

  private static double reach(Spot spot, int side) {
    double value = side % 2 == 0 ? spot.x : spot.y;
    return side < 2 ? value : -value;
  }

  /** Narrows the best sample down by thirds. */
  private double furthest(int side, double near) {
    double low = Math.max(0, near - 1.0 / SAMPLES);
    double high = Math.min(1, near + 1.0 / SAMPLES);
    for (int round = 0; round < 24; round++) {
      double third = (high - low) / 3;
      if (reach(at(low + third), side) <= reach(at(high - third), side)) {
        high -= third;
      } else {
        low += third;
      }
    }
    return (low + high) / 2;
  }

  @Override
  public void flatten(double toleranceMm, List<Point> points) {
    Point from = start();
    List<Point> inner = new ArrayList<>();
    int parts = 4;
    for (int i = 1; i <= parts; i++) {
      double a = (i - 1) / (double) parts;
      double b = i / (double) parts;
      Point to = i == parts ? end() : at(b).point();
      split(a, b, from, to, toleranceMm, DEEPEST_FLAT, inner);
      from = to;
    }
    points.addAll(inner);
  }

  private void split(
      double a, double b, Point from, Point to, double tolerance, int depth, List<Point> points) {
    double middle = (a + b) / 2;
    Point half = at(middle).point();
    double chord = from.distance(to);
    double off =
        chord == 0 ? from.distance(half) : Math.abs(to.minus(from).cross(half.minus(from))) / chord;
    if (depth == 0 || !(off > tolerance)) {
      points.add(to);
      return;
    }
    split(a, middle, from, half, tolerance, depth - 1, points);
    split(middle, b, half, to, tolerance, depth - 1, points);
  }

  @Override
  public Point middle() {
    return at(0.5).point();
  }
}
