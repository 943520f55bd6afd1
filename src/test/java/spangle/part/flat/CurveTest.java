package spangle.part.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.part.ShapeException;

/** Areas and lengths against closed forms worked by hand. */
class CurveTest {
  private static final Point ORIGIN = new Point(0, 0);

  private static Contour contour(List<? extends Curve> curves) {
    return new Contour(List.copyOf(curves), "test");
  }

  @Test
  void aCircle() {
    Contour circle = contour(List.of(Arc.circle(new Point(1e5, -3e4), 25)));
    assertThat(circle.areaMm2()).isEqualTo(625 * Math.PI, within(1e-6));
    assertThat(circle.lengthMm()).isEqualTo(50 * Math.PI, within(1e-9));
    assertThat(circle.extent().width()).isEqualTo(50, within(1e-9));
  }

  /** Area pi a b; perimeter for a = 2, b = 1 is 4 a E(3/4) = 9.68844822 (tables of E). */
  @Test
  void anEllipse() {
    Contour ellipse =
        contour(List.of(new Arc(ORIGIN, new Point(2, 0), new Point(0, 1), 0, 2 * Math.PI)));
    assertThat(ellipse.areaMm2()).isEqualTo(2 * Math.PI, within(1e-12));
    assertThat(ellipse.lengthMm()).isEqualTo(9.688448220547676, within(1e-9));
  }

  @Test
  void aTurnedEllipseReachesAsFarAsItsProjection() {
    double angle = Math.toRadians(30);
    Point u = new Point(40 * Math.cos(angle), 40 * Math.sin(angle));
    Point v = new Point(-10 * Math.sin(angle), 10 * Math.cos(angle));
    Extent extent = new Arc(ORIGIN, u, v, 0, 2 * Math.PI).extent();
    assertThat(extent.maxX()).isEqualTo(Math.sqrt(1600 * 0.75 + 100 * 0.25), within(1e-9));
    assertThat(extent.maxY()).isEqualTo(Math.sqrt(1600 * 0.25 + 100 * 0.75), within(1e-9));
  }

  /** A slot of 100 x 20 by bulges of half circles: 80 x 20 + pi 100. */
  @Test
  void bulges() {
    Point a = new Point(10, 0);
    Point b = new Point(90, 0);
    Point c = new Point(90, 20);
    Point d = new Point(10, 20);
    Contour slot =
        contour(
            List.of(new Segment(a, b), Arc.bulge(b, c, 1), new Segment(c, d), Arc.bulge(d, a, 1)));
    assertThat(slot.areaMm2()).isEqualTo(1600 + 100 * Math.PI, within(1e-9));
    assertThat(slot.lengthMm()).isEqualTo(160 + 20 * Math.PI, within(1e-9));
    assertThat(slot.extent().maxX()).isEqualTo(100, within(1e-9));
    assertThat(slot.extent().minX()).isEqualTo(0, within(1e-9));
  }

  /** A bulge of tan(22.5 degrees) is a quarter circle; below zero it turns inwards. */
  @Test
  void aQuarterCircleInwards() {
    double bulge = -Math.tan(Math.PI / 8);
    Point b = new Point(10, 0);
    Point c = new Point(0, 10);
    Contour bite =
        contour(List.of(new Segment(ORIGIN, b), Arc.bulge(b, c, bulge), new Segment(c, ORIGIN)));
    // Centre at (10, 10): what is left of the square's corner is 100 - 25 pi.
    assertThat(bite.areaMm2()).isEqualTo(100 - 25 * Math.PI, within(1e-9));
  }

  /** x = 3 t2 - 2 t3, y = 3 t (1 - t): the area below is 18 B(3, 3) = 18 / 30. */
  @Test
  void aCubicBezier() {
    Bezier curve = Bezier.of(List.of(ORIGIN, new Point(0, 1), new Point(1, 1), new Point(1, 0)));
    assertThat(curve.sliverMm2()).isEqualTo(-0.6, within(1e-12));
    assertThat(curve.reversed().sliverMm2()).isEqualTo(0.6, within(1e-12));
    assertThat(curve.extent().maxY()).isEqualTo(0.75, within(1e-9));
  }

  /** A parabola over a chord of 2 with control height 1: 2/3 of the triangle with base 2. */
  @Test
  void aQuadraticBezier() {
    Bezier curve = Bezier.of(List.of(ORIGIN, new Point(1, 1), new Point(2, 0)));
    assertThat(Math.abs(curve.sliverMm2())).isEqualTo(2.0 / 3, within(1e-12));
    // y = x - x2/2 from 0 to 2: length sqrt 2 + arsinh 1.
    assertThat(curve.lengthMm()).isEqualTo(Math.sqrt(2) + Math.log(1 + Math.sqrt(2)), within(1e-9));
  }

  /** The nine-point rational quadratic spline is an exact circle (textbook of B-splines). */
  static List<Bezier> splineCircle(double r) {
    double w = Math.sqrt(0.5);
    double[] knots = {0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4};
    double[] weights = {1, w, 1, w, 1, w, 1, w, 1};
    List<Point> control =
        List.of(
            new Point(r, 0),
            new Point(r, r),
            new Point(0, r),
            new Point(-r, r),
            new Point(-r, 0),
            new Point(-r, -r),
            new Point(0, -r),
            new Point(r, -r),
            new Point(r, 0));
    return Splines.byControl(2, knots, control, weights);
  }

  @Test
  void aRationalSplineIsACircle() {
    Contour circle = contour(splineCircle(50));
    assertThat(circle.areaMm2()).isEqualTo(2500 * Math.PI, within(1e-7));
    assertThat(circle.lengthMm()).isEqualTo(100 * Math.PI, within(1e-7));
    assertThat(circle.extent().height()).isEqualTo(100, within(1e-7));
  }

  /** One uniform cubic span over control points 0, 1, 2, 3 on a line and 0, 6, 6, 0 across. */
  @Test
  void aUniformCubicSpline() {
    double[] knots = {0, 1, 2, 3, 4, 5, 6, 7};
    List<Point> control = List.of(ORIGIN, new Point(1, 6), new Point(2, 6), new Point(3, 0));
    List<Bezier> spans = Splines.byControl(3, knots, control, new double[0]);
    assertThat(spans).hasSize(1);
    // Ends are (P0 + 4 P1 + P2) / 6 = (1, 5) and (2, 5); y = 5 + 3 t (1 - t), x = 1 + t.
    assertThat(spans.get(0).start().y()).isEqualTo(5, within(1e-12));
    assertThat(spans.get(0).end().x()).isEqualTo(2, within(1e-12));
    assertThat(Math.abs(spans.get(0).sliverMm2())).isEqualTo(0.5, within(1e-12));
  }

  @Test
  void throughPointsOfACircleWithinAHundredthOfAPercent() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 32; i++) {
      double t = 2 * Math.PI * i / 32;
      points.add(new Point(100 * Math.cos(t), 100 * Math.sin(t)));
    }
    Optional<Point> up = Optional.of(new Point(0, 1));
    Contour circle = contour(Splines.through(points, up, up));
    assertThat(circle.areaMm2()).isEqualTo(1e4 * Math.PI, within(Math.PI));
  }

  @Test
  void throughPointsOfALineItIsThatLine() {
    List<Point> line = List.of(ORIGIN, new Point(1, 2), new Point(3, 6));
    double length =
        Splines.through(line, Optional.empty(), Optional.empty()).stream()
            .mapToDouble(Curve::lengthMm)
            .sum();
    assertThat(length).isEqualTo(Math.hypot(3, 6), within(1e-9));
  }

  @Test
  void aCircleInASqueezedBlockIsAnEllipse() {
    Curve squeezed = Arc.circle(ORIGIN, 10).transformed(Affine.scale(2, 0.5).then(Affine.turn(37)));
    assertThat(contour(List.of(squeezed)).areaMm2()).isEqualTo(100 * Math.PI, within(1e-9));
  }

  @Test
  void numbersThatMakeNoSplineAreRefused() {
    List<Point> two = List.of(ORIGIN, new Point(1, 0));
    double[] knots = {0, 0, 1, 1};
    assertThat(Splines.byControl(1, knots, two, new double[0])).hasSize(1);
    assertThatThrownBy(() -> Splines.byControl(3, knots, two, new double[0]))
        .isInstanceOf(ShapeException.class)
        .hasMessageContaining("control points");
    assertThatThrownBy(() -> Splines.byControl(1, new double[] {0, 1}, two, new double[0]))
        .isInstanceOf(ShapeException.class)
        .hasMessageContaining("knots");
    assertThatThrownBy(() -> Splines.byControl(1, new double[] {0, 1, 0, 1}, two, new double[0]))
        .isInstanceOf(ShapeException.class)
        .hasMessageContaining("at least the one before");
    assertThatThrownBy(() -> Splines.byControl(1, knots, two, new double[] {1, 0}))
        .isInstanceOf(ShapeException.class)
        .hasMessageContaining("weight");
  }
}
