package spangle.part.flat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import spangle.part.ShapeException;

/** B-splines, rational ones too, as rows of Bezier curves. */
public final class Splines {
  /** Curves of a higher degree are no drawing. */
  public static final int HIGHEST_DEGREE = 15;

  private Splines() {}

  /**
   * A B-spline by control points.
   *
   * @param degree 1 to {@link #HIGHEST_DEGREE}
   * @param knots degree + control points + 1 numbers, never falling
   * @param control control points
   * @param weights one for each control point, above zero; empty when all are alike
   * @throws ShapeException when the numbers make no curve
   */
  public static List<Bezier> byControl(
      int degree, double[] knots, List<Point> control, double[] weights) {
    int count = control.size();
    check(degree, knots, count, weights);
    double[] w = weights.length == 0 ? new double[count] : weights;
    if (weights.length == 0) {
      Arrays.fill(w, 1);
    }
    List<Bezier> curves = new ArrayList<>();
    for (int span = degree; span < count; span++) {
      if (knots[span + 1] > knots[span]) {
        curves.add(span(degree, knots, control, w, span));
      }
    }
    if (curves.isEmpty()) {
      throw new ShapeException(
          "spline's knots", knots[degree], "rising somewhere", "draw the curve again");
    }
    return curves;
  }

  private static void check(int degree, double[] knots, int count, double[] weights) {
    if (degree < 1 || degree > HIGHEST_DEGREE) {
      throw new ShapeException(
          "spline degree", degree, "between 1 and " + HIGHEST_DEGREE, "draw the curve again");
    }
    if (count <= degree) {
      throw new ShapeException(
          "number of control points", count, "more than the degree, " + degree, "draw it again");
    }
    if (knots.length != count + degree + 1) {
      throw new ShapeException(
          "number of knots",
          knots.length,
          "control points + degree + 1 = " + (count + degree + 1),
          "draw the curve again");
    }
    for (int i = 1; i < knots.length; i++) {
      if (!(knots[i] >= knots[i - 1]) || Double.isInfinite(knots[i])) {
        throw new ShapeException(
            "spline knot", knots[i], "at least the one before", "draw the curve again");
      }
    }
    if (weights.length != 0 && weights.length != count) {
      throw new ShapeException(
          "number of weights", weights.length, "one for each control point", "draw it again");
    }
    for (double weight : weights) {
      if (!(weight > 1e-9 && weight < 1e9)) {
        throw new ShapeException("spline weight", weight, "above zero", "draw the curve again");
      }
    }
  }

  /** The Bezier points of one knot span are blossoms of its two ends. */
  private static Bezier span(
      int degree, double[] knots, List<Point> control, double[] weights, int span) {
    double a = knots[span];
    double b = knots[span + 1];
    double[] x = new double[degree + 1];
    double[] y = new double[degree + 1];
    double[] w = new double[degree + 1];
    for (int k = 0; k <= degree; k++) {
      double[] dx = new double[degree + 1];
      double[] dy = new double[degree + 1];
      double[] dw = new double[degree + 1];
      for (int i = 0; i <= degree; i++) {
        int at = span - degree + i;
        dw[i] = weights[at];
        dx[i] = control.get(at).x() * dw[i];
        dy[i] = control.get(at).y() * dw[i];
      }
      for (int round = 1; round <= degree; round++) {
        double argument = round <= degree - k ? a : b;
        for (int i = degree; i >= round; i--) {
          double low = knots[span - degree + i];
          double high = knots[span + 1 + i - round];
          double share = (argument - low) / (high - low);
          dx[i] = (1 - share) * dx[i - 1] + share * dx[i];
          dy[i] = (1 - share) * dy[i - 1] + share * dy[i];
          dw[i] = (1 - share) * dw[i - 1] + share * dw[i];
        }
      }
      x[k] = dx[degree];
      y[k] = dy[degree];
      w[k] = dw[degree];
    }
    return new Bezier(x, y, w);
  }

  /**
   * The smooth cubic curve through points, parameters by chord length.
   *
   * @param points two or more, neighbours apart
   * @param startTangent direction at the start, when fixed; else the curve ends without bending
   * @param endTangent direction at the end, likewise
   * @throws ShapeException when fewer than two points are apart
   */
  public static List<Bezier> through(
      List<Point> points, Optional<Point> startTangent, Optional<Point> endTangent) {
    List<Point> p = apart(points);
    int n = p.size() - 1;
    if (n < 1) {
      throw new ShapeException(
          "number of fit points", p.size(), "two or more, apart", "draw the curve again");
    }
    double[] h = new double[n];
    for (int i = 0; i < n; i++) {
      h[i] = p.get(i).distance(p.get(i + 1));
    }
    Point[] slope = slopes(p, h, startTangent, endTangent);
    List<Bezier> curves = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point a = p.get(i);
      Point d = p.get(i + 1);
      curves.add(
          Bezier.of(
              List.of(
                  a, a.plus(slope[i].times(h[i] / 3)), d.minus(slope[i + 1].times(h[i] / 3)), d)));
    }
    return curves;
  }

  private static List<Point> apart(List<Point> points) {
    List<Point> result = new ArrayList<>();
    for (Point point : points) {
      if (result.isEmpty() || result.get(result.size() - 1).distance(point) > 1e-9) {
        result.add(point);
      }
    }
    return result;
  }

  /** Slopes with which the curve is smooth to the second derivative: a tridiagonal system. */
  private static Point[] slopes(
      List<Point> p, double[] h, Optional<Point> startTangent, Optional<Point> endTangent) {
    int n = h.length;
    double[] below = new double[n + 1];
    double[] on = new double[n + 1];
    double[] above = new double[n + 1];
    Point[] right = new Point[n + 1];
    Point first = p.get(1).minus(p.get(0)).times(1 / h[0]);
    Point last = p.get(n).minus(p.get(n - 1)).times(1 / h[n - 1]);
    Optional<Point> start = unit(startTangent);
    Optional<Point> end = unit(endTangent);
    on[0] = start.isPresent() ? 1 : 2;
    above[0] = start.isPresent() ? 0 : 1;
    right[0] = start.orElseGet(() -> first.times(3));
    on[n] = end.isPresent() ? 1 : 2;
    below[n] = end.isPresent() ? 0 : 1;
    right[n] = end.orElseGet(() -> last.times(3));
    for (int i = 1; i < n; i++) {
      below[i] = h[i];
      on[i] = 2 * (h[i - 1] + h[i]);
      above[i] = h[i - 1];
      Point before = p.get(i).minus(p.get(i - 1)).times(3 * h[i] / h[i - 1]);
      right[i] = before.plus(p.get(i + 1).minus(p.get(i)).times(3 * h[i - 1] / h[i]));
    }
    for (int i = 1; i <= n; i++) {
      double factor = below[i] / on[i - 1];
      on[i] -= factor * above[i - 1];
      right[i] = right[i].minus(right[i - 1].times(factor));
    }
    Point[] slope = new Point[n + 1];
    slope[n] = right[n].times(1 / on[n]);
    for (int i = n - 1; i >= 0; i--) {
      slope[i] = right[i].minus(slope[i + 1].times(above[i])).times(1 / on[i]);
    }
    return slope;
  }

  private static Optional<Point> unit(Optional<Point> tangent) {
    return tangent.filter(t -> t.length() > 1e-12).map(t -> t.times(1 / t.length()));
  }
}
