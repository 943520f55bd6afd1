package spangle.part.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Curves moved, turned, run backwards and drawn by straight lines; plane geometry by hand. */
class CurveMotionTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private static void at(Point point, double x, double y) {
    assertThat(point.x()).isEqualTo(x, EXACT);
    assertThat(point.y()).isEqualTo(y, EXACT);
  }

  private static List<Point> drawn(Curve curve, double tolerance) {
    List<Point> points = new ArrayList<>(List.of(curve.start()));
    curve.flatten(tolerance, points);
    return points;
  }

  private static double length(List<Point> points) {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += points.get(i - 1).distance(points.get(i));
    }
    return sum;
  }

  @Test
  void oneMoveAfterTheOther() {
    at(Affine.shift(3, 4).point(new Point(1, 2)), 4, 6);
    at(Affine.shift(3, 4).vector(new Point(1, 2)), 1, 2);
    // Scaled to (2, 3), turned to (-3, 2), shifted to (2, 8).
    Affine all = Affine.scale(2, 3).then(Affine.turn(90)).then(Affine.shift(5, 6));
    at(all.point(new Point(1, 1)), 2, 8);
    Affine one = new Affine(2, 3, 5, 7, 11, 13);
    Affine two = new Affine(17, 19, 23, 29, 31, 37);
    Point p = new Point(1.5, -0.5);
    Point stepwise = two.point(one.point(p));
    at(one.then(two).point(p), stepwise.x(), stepwise.y());
    // 2 x 1.5 - 5 x 0.5 + 11 and 3 x 1.5 - 7 x 0.5 + 13
    at(one.point(p), 11.5, 14);
    assertThat(one.areaFactor()).isEqualTo(2 * 7 - 3 * 5, EXACT);
    assertThat(Affine.scale(-2, 3).areaFactor()).isEqualTo(-6, EXACT);
    assertThat(one.then(two).areaFactor())
        .isEqualTo(one.areaFactor() * two.areaFactor(), within(1e-6));
  }

  @Test
  void aQuarterCircleByItsBulge() {
    double bulge = Math.tan(Math.PI / 8);
    Curve left = Arc.bulge(new Point(11, 5), new Point(1, 15), bulge);
    at(left.middle(), 1 + 10 * Math.sqrt(0.5), 5 + 10 * Math.sqrt(0.5));
    at(left.start(), 11, 5);
    at(left.end(), 1, 15);
    assertThat(left.lengthMm()).isEqualTo(5 * Math.PI, EXACT);
    assertThat(left.sliverMm2()).isEqualTo(25 * Math.PI - 50, EXACT);
    Curve right = Arc.bulge(new Point(1, 15), new Point(11, 5), -bulge);
    at(right.middle(), 1 + 10 * Math.sqrt(0.5), 5 + 10 * Math.sqrt(0.5));
    assertThat(right.sliverMm2()).isEqualTo(50 - 25 * Math.PI, EXACT);
  }

  @Test
  void aBulgeOfNothingIsALine() {
    Point a = new Point(0, 0);
    Point b = new Point(10, 0);
    assertThat(Arc.bulge(a, b, 0)).isEqualTo(new Segment(a, b));
    assertThat(Arc.bulge(a, a, 0.5)).isEqualTo(new Segment(a, a));
    assertThat(Arc.bulge(a, b, 1e-10)).isEqualTo(new Segment(a, b));
    assertThat(Arc.bulge(a, b, 1e-6)).isInstanceOf(Arc.class);
  }

  /** A third of a circle of 10 reaches a quarter point only where it passes it. */
  @Test
  void howFarAnArcReaches() {
    double deg = Math.PI / 180;
    Arc top = Arc.circle(new Point(0, 0), 10, 30 * deg, 90 * deg);
    for (Arc each : List.of(top, top.reversed())) {
      Extent extent = each.extent();
      assertThat(extent.maxY()).isEqualTo(10, EXACT);
      assertThat(extent.minY()).isEqualTo(5, EXACT);
      assertThat(extent.maxX()).isEqualTo(10 * Math.cos(30 * deg), EXACT);
      assertThat(extent.minX()).isEqualTo(-5, EXACT);
    }
    Extent right = Arc.circle(new Point(0, 0), 10, 300 * deg, 90 * deg).extent();
    assertThat(right.maxX()).isEqualTo(10, EXACT);
    assertThat(right.maxY()).isEqualTo(5, EXACT);
    assertThat(right.minY()).isEqualTo(-10 * Math.cos(30 * deg), EXACT);
    Extent low = Arc.circle(new Point(0, 0), 10, -30 * deg, -90 * deg).extent();
    assertThat(low.minY()).isEqualTo(-10, EXACT);
    assertThat(low.maxY()).isEqualTo(-5, EXACT);
    assertThat(low.minX()).isEqualTo(-5, EXACT);
    assertThat(low.maxX()).isEqualTo(10 * Math.cos(30 * deg), EXACT);
  }

  @Test
  void anArcRunBackwards() {
    Arc arc = Arc.circle(new Point(2, 3), 10, 0.4, 1.3);
    Arc back = arc.reversed();
    at(back.start(), arc.end().x(), arc.end().y());
    at(back.end(), arc.start().x(), arc.start().y());
    at(back.middle(), 2 + 10 * Math.cos(1.05), 3 + 10 * Math.sin(1.05));
    assertThat(back.lengthMm()).isEqualTo(13, EXACT);
    assertThat(back.sliverMm2()).isEqualTo(-arc.sliverMm2(), EXACT);
    assertThat(arc.sliverMm2()).isEqualTo(50 * (1.3 - Math.sin(1.3)), EXACT);
    Point round = Arc.circle(new Point(0, 0), 10, 1, 2 * Math.PI - 1e-10).end();
    at(round, 10 * Math.cos(1), 10 * Math.sin(1));
  }

  /** Axes of one length that are not square, or square but of two lengths, make no circle. */
  @Test
  void anEllipseIsMeasuredAlongItsCurve() {
    Point u = new Point(1, 0);
    Arc slanted = new Arc(u, u, new Point(0.5, Math.sqrt(0.75)), 0.2, 4);
    assertThat(slanted.lengthMm())
        .isEqualTo(length(drawn(slanted, 1e-7)), within(1e-4))
        .isNotCloseTo(4, within(0.01));
    Arc flat = new Arc(u, u, new Point(0, 0.5), 0.2, -4);
    assertThat(flat.lengthMm()).isEqualTo(length(drawn(flat, 1e-7)), within(1e-4));
    assertThat(Arc.circle(u, 3, 0.2, -4).lengthMm()).isEqualTo(12, EXACT);
  }

  /** Radius 10, 0.1 mm: 2 acos(0.99) = 16.2 degrees a step, 23 steps; never under a twelfth. */
  @Test
  void anArcByStraightLines() {
    Arc circle = Arc.circle(new Point(4, 5), 10);
    List<Point> points = drawn(circle, 0.1);
    assertThat(points).hasSize(24);
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).distance(circle.centre())).isEqualTo(10, EXACT);
      double half = points.get(i).distance(points.get(i - 1)) / 2;
      assertThat(10 - Math.sqrt(100 - half * half)).isLessThanOrEqualTo(0.1);
    }
    at(points.get(23), 14, 5);
    assertThat(drawn(circle, 20)).hasSize(13);
    assertThat(drawn(circle, 1e-12)).hasSize(2001);
    Arc short10 = Arc.circle(new Point(0, 0), 10, 0, Math.PI / 18);
    assertThat(drawn(short10, 1)).hasSize(3);
    at(drawn(short10, 1).get(1), 10 * Math.cos(Math.PI / 36), 10 * Math.sin(Math.PI / 36));
    assertThat(drawn(Arc.circle(new Point(0, 0), 10, 0, -Math.PI), 0.1)).hasSize(13);
  }

  private static Bezier arch() {
    return Bezier.of(
        List.of(new Point(0, 0), new Point(0, 10), new Point(10, 10), new Point(10, 0)));
  }

  /** Half way a cubic is (P0 + 3 P1 + 3 P2 + P3) / 8; what is moved stays on the moved curve. */
  @Test
  void aCurveMovesWithItsPoints() {
    at(arch().middle(), 5, 7.5);
    Affine move = new Affine(2, 3, 5, 7, 11, 13);
    Bezier moved = arch().transformed(move);
    at(moved.start(), 11, 13);
    at(moved.end(), 31, 43);
    at(moved.middle(), 2 * 5 + 5 * 7.5 + 11, 3 * 5 + 7 * 7.5 + 13);
    assertThat(moved.sliverMm2()).isEqualTo(arch().sliverMm2() * move.areaFactor(), within(1e-6));
    Bezier back = moved.reversed();
    at(back.start(), 31, 43);
    at(back.end(), 11, 13);
  }

  /** A quarter circle as a rational curve, weights doubled: their ratio alone counts. */
  @Test
  void weightsAreRatios() {
    double w = 2 * Math.sqrt(0.5);
    Bezier quarter =
        new Bezier(new double[] {2, w, 0}, new double[] {0, w, 2}, new double[] {2, w, 2});
    at(quarter.start(), 1, 0);
    at(quarter.end(), 0, 1);
    at(quarter.middle(), Math.sqrt(0.5), Math.sqrt(0.5));
    assertThat(quarter.lengthMm()).isEqualTo(Math.PI / 2, EXACT);
    assertThat(quarter.sliverMm2()).isEqualTo(Math.PI / 4 - 0.5, EXACT);
    Bezier moved = quarter.transformed(new Affine(0, 3, -3, 0, 5, 7));
    at(moved.start(), 5, 10);
    at(moved.end(), 2, 7);
    assertThat(moved.lengthMm()).isEqualTo(1.5 * Math.PI, EXACT);
    for (Point point : drawn(moved, 0.01)) {
      assertThat(point.distance(new Point(5, 7))).isEqualTo(3, EXACT);
    }
  }

  /** y = 60 t (1 - t) (1 - 2 t) has its extremes of 60 sqrt(3) / 18 inside. */
  @Test
  void howFarACurveReaches() {
    Bezier wave =
        Bezier.of(List.of(new Point(0, 0), new Point(5, 20), new Point(10, -20), new Point(15, 0)));
    double top = 60 * Math.sqrt(3) / 18;
    Extent extent = wave.extent();
    assertThat(extent.maxY()).isEqualTo(top, within(1e-6));
    assertThat(extent.minY()).isEqualTo(-top, within(1e-6));
    assertThat(extent.minX()).isEqualTo(0, EXACT);
    assertThat(extent.maxX()).isEqualTo(15, EXACT);
    Extent upright = wave.transformed(Affine.turn(90)).extent();
    assertThat(upright.maxX()).isEqualTo(top, within(1e-6));
    assertThat(upright.minX()).isEqualTo(-top, within(1e-6));
    assertThat(upright.maxY()).isEqualTo(15, EXACT);
    assertThat(arch().extent().maxY()).isEqualTo(7.5, within(1e-9));
  }

  @Test
  void aCurveByStraightLines() {
    List<Point> rough = drawn(arch(), 100);
    assertThat(rough).hasSize(5);
    at(rough.get(2), 5, 7.5);
    // A quarter of the way: (27 P0 + 27 P1 + 9 P2 + P3) / 64.
    at(rough.get(1), 100.0 / 64, 360.0 / 64);
    at(rough.get(4), 10, 0);
    List<Point> fine = drawn(arch(), 0.001);
    assertThat(fine).hasSizeBetween(33, 129);
    assertThat(length(fine)).isEqualTo(arch().lengthMm(), within(0.005));
    assertThat(length(rough)).isLessThan(length(fine) - 0.1);
    double before = -1;
    for (Point point : fine) {
      assertThat(point.x()).isGreaterThanOrEqualTo(before);
      before = point.x();
    }
    // A straight one needs no more than its quarters, a closed one does not end at its start.
    Bezier line = Bezier.of(List.of(new Point(0, 0), new Point(5, 0), new Point(10, 0)));
    assertThat(drawn(line, 0.001)).hasSize(5);
    Bezier loop =
        Bezier.of(List.of(new Point(0, 0), new Point(30, 30), new Point(-30, 30), new Point(0, 0)));
    assertThat(length(drawn(loop, 0.001))).isEqualTo(loop.lengthMm(), within(0.01));
  }

  private static void moved(Motion motion, double[] from, double x, double y, double z) {
    double[] to = motion.apply(from[0], from[1], from[2]);
    assertThat(to[0]).isEqualTo(x, EXACT);
    assertThat(to[1]).isEqualTo(y, EXACT);
    assertThat(to[2]).isEqualTo(z, EXACT);
  }

  /**
   * A bend about a slanted line, flat zone 4, middle radius 3: the zone begins 2 before the line. A
   * quarter turn ends 3 further and 3 high; of 12 mm beyond the line 10 stand up from there.
   */
  @Test
  void aBendInSpace() {
    Point on = new Point(10, 20);
    Point away = new Point(0.6, 0.8);
    double[] tip = {10 + 12 * 0.6, 20 + 12 * 0.8, 0};
    Motion up = Motion.bend(on, away, Math.PI / 2, 1, 4, 3);
    moved(up, tip, 10.6, 20.8, 13);
    moved(Motion.bend(on, away, Math.PI / 2, -1, 4, 3), tip, 10.6, 20.8, -13);
    // The upper face of the sheet then looks back.
    moved(up, new double[] {tip[0], tip[1], 1}, 10, 20, 13);
    // Along the line nothing changes: 5 mm to the side stay 5 mm.
    moved(up, new double[] {tip[0] - 4, tip[1] + 3, 0}, 6.6, 23.8, 13);
    double rise = 3 * (1 - Math.sqrt(0.75)) + 5;
    double out = -2 + 1.5 + 10 * Math.sqrt(0.75);
    moved(Motion.bend(on, away, Math.PI / 6, 1, 4, 3), tip, 10 + out * 0.6, 20 + out * 0.8, rise);
  }

  @Test
  void oneBendAfterTheOther() {
    Motion one = Motion.bend(new Point(10, 20), new Point(0.6, 0.8), 0.7, 1, 4, 3);
    Motion two = Motion.bend(new Point(-5, 2), new Point(-0.8, 0.6), 1.1, -1, 3, 2.5);
    double[] p = {7, -3, 2};
    double[] first = one.apply(p[0], p[1], p[2]);
    double[] both = two.apply(first[0], first[1], first[2]);
    moved(two.after(one), p, both[0], both[1], both[2]);
    moved(Motion.REST.after(one), p, first[0], first[1], first[2]);
    moved(one.after(Motion.REST), p, first[0], first[1], first[2]);
  }

  @Test
  void pointsOfThisWorld() {
    assertThat(new Point(Extent.WORLD, -Extent.WORLD).finite()).isTrue();
    assertThat(new Point(Extent.WORLD * 1.01, 0).finite()).isFalse();
    assertThat(new Point(0, -Extent.WORLD * 1.01).finite()).isFalse();
    assertThat(new Point(Double.NaN, 0).finite()).isFalse();
  }
}
