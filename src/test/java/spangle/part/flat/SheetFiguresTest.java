package spangle.part.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Size, contours and strokes of a flat sheet; plane geometry by hand. */
class SheetFiguresTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private static Contour polygon(double... xy) {
    List<Curve> sides = new ArrayList<>();
    int corners = xy.length / 2;
    for (int i = 0; i < corners; i++) {
      int j = (i + 1) % corners;
      sides.add(
          new Segment(new Point(xy[2 * i], xy[2 * i + 1]), new Point(xy[2 * j], xy[2 * j + 1])));
    }
    return new Contour(sides, "polygon");
  }

  private static Contour rectangle(double x, double y, double length, double width) {
    return polygon(x, y, x + length, y, x + length, y + width, x, y + width);
  }

  @Test
  void aSheetAsItIsDrawn() {
    FlatSize upright = FlatSize.of(List.of(rectangle(5, 7, 30, 80)));
    assertThat(upright).isEqualTo(new FlatSize(80, 30, 0));
    FlatSize both = FlatSize.of(List.of(rectangle(0, 0, 30, 20), rectangle(70, 0, 30, 20)));
    assertThat(both.lengthMm()).isEqualTo(100, EXACT);
    assertThat(both.widthMm()).isEqualTo(20, EXACT);
    assertThat(both.turnedDeg()).isZero();
  }

  /** 100 x 20 drawn at 30 degrees needs 96.6 x 67.3 upright; turned back it is itself. */
  @Test
  void aSheetThatLiesAslantIsTurned() {
    Contour slanted = rectangle(0, 0, 100, 20).transformed(Affine.turn(30));
    FlatSize size = FlatSize.of(List.of(slanted));
    assertThat(size.lengthMm()).isEqualTo(100, within(1e-6));
    assertThat(size.widthMm()).isEqualTo(20, within(1e-6));
    assertThat(Math.abs(Math.sin(Math.toRadians(2 * (size.turnedDeg() - 30))))).isLessThan(1e-6);
  }

  /**
   * A circle gains nothing by turning, nor does a square with a hair's lean: under two per cent.
   */
  @Test
  void aSheetThatGainsNothingStaysAsDrawn() {
    Contour round = new Contour(List.of(Arc.circle(new Point(3, 4), 25)), "circle");
    FlatSize circle = FlatSize.of(List.of(round));
    assertThat(circle.turnedDeg()).isZero();
    assertThat(circle.lengthMm()).isEqualTo(50, EXACT);
    Contour leaning = rectangle(0, 0, 100, 100).transformed(Affine.turn(0.5));
    assertThat(FlatSize.of(List.of(leaning)).turnedDeg()).isZero();
    double side = 100 * (Math.cos(Math.toRadians(0.5)) + Math.sin(Math.toRadians(0.5)));
    assertThat(FlatSize.of(List.of(leaning)).lengthMm()).isEqualTo(side, within(1e-6));
  }

  private static FlatLayout layout(List<Contour> outers, List<Contour> holes, double islands) {
    return new FlatLayout(
        outers,
        holes,
        islands > 0 ? List.of(rectangle(11, 11, 2, 1)) : List.of(),
        islands,
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  @Test
  void netAreaEdgeAndCountOfAll() {
    FlatLayout sheet =
        layout(
            List.of(rectangle(0, 0, 40, 30), rectangle(50, 0, 10, 10)),
            List.of(rectangle(10, 10, 5, 4)),
            2);
    assertThat(sheet.netAreaMm2()).isEqualTo(1200 + 100 - 20 + 2, EXACT);
    assertThat(sheet.cutEdgeMm()).isEqualTo(140 + 40 + 18 + 6, EXACT);
    assertThat(sheet.contours()).isEqualTo(4);
    assertThat(sheet.extent()).contains(new Extent(0, 0, 60, 30));
    assertThat(sheet.measurable()).isTrue();
    FlatLayout none = layout(List.of(), List.of(), 0);
    assertThat(none.extent()).isEmpty();
    assertThat(none.measurable()).isFalse();
    FlatLayout eaten = layout(List.of(rectangle(0, 0, 4, 3)), List.of(rectangle(0, 0, 4, 3)), 0);
    assertThat(eaten.measurable()).isFalse();
  }

  /** A square of which a corner is left open by (0.2, 0.1): the gap is bridged straight. */
  @Test
  void smallGapsAreBridged() {
    Contour gapped =
        new Contour(
            List.of(
                new Segment(new Point(1, 1), new Point(11, 1)),
                new Segment(new Point(11.2, 1.1), new Point(11, 11)),
                new Segment(new Point(11, 11), new Point(1, 11)),
                new Segment(new Point(1, 11), new Point(1, 1.5))),
            "gapped");
    // Shoelace of (1,1) (11,1) (11.2,1.1) (11,11) (1,11) (1,1.5).
    double twice = shoelace(1, 1, 11, 1, 11.2, 1.1, 11, 11, 1, 11, 1, 1.5);
    assertThat(gapped.areaMm2()).isEqualTo(twice / 2, EXACT);
    assertThat(gapped.lengthMm())
        .isEqualTo(10 + Math.hypot(0.2, 0.1) + Math.hypot(0.2, 9.9) + 10 + 9.5 + 0.5, EXACT);
    assertThat(gapped.flattened(0.1)).hasSize(7);
    assertThat(gapped.flattened(0.1).get(6)).isEqualTo(new Point(1, 1));
    assertThat(rectangle(0, 0, 4, 3).flattened(0.1)).hasSize(5);
  }

  private static double shoelace(double... xy) {
    double twice = 0;
    int n = xy.length / 2;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      twice += xy[2 * i] * xy[2 * j + 1] - xy[2 * j] * xy[2 * i + 1];
    }
    return Math.abs(twice);
  }

  @Test
  void strokesKeepWhatTheyAre() {
    Arc circle = Arc.circle(new Point(0, 0), 5);
    Arc half = Arc.circle(new Point(0, 0), 5, 0, Math.PI);
    assertThat(Stroke.of(circle, Stroke.Role.CUT, "a").closed()).isTrue();
    assertThat(Stroke.of(half, Stroke.Role.CUT, "a").closed()).isFalse();
    Segment line = new Segment(new Point(0, 0), new Point(1, 2));
    Stroke stroke = Stroke.of(line, Stroke.Role.BEND, "line 3");
    assertThat(stroke.closed()).isFalse();
    assertThat(stroke.transformed(Affine.shift(10, 20)))
        .isEqualTo(
            Stroke.of(
                new Segment(new Point(10, 20), new Point(11, 22)), Stroke.Role.BEND, "line 3"));
    assertThat(stroke.as(Stroke.Role.MARK)).isEqualTo(Stroke.of(line, Stroke.Role.MARK, "line 3"));
  }

  /** The same square drawn twice counts once; another in its bounds, or another square, stays. */
  @Test
  void whatIsDrawnTwiceCountsOnce() {
    Contour square = rectangle(0, 0, 10, 10);
    Contour again = polygon(10.0001, 10, 0, 10, 0, 0, 10, 0);
    Contour corner = polygon(0, 0, 10, 0, 10, 10);
    Contour notched = polygon(0, 0, 10, 0, 10, 10, 5.5, 10, 5.5, 9, 4.5, 9, 4.5, 10, 0, 10);
    Contour beside = rectangle(20, 0, 10, 10);
    List<Defect> defects = new ArrayList<>();
    List<Contour> once =
        new Doubles(Tolerances.of(100))
            .removed(List.of(square, again, corner, notched, beside), defects);
    assertThat(once).containsExactly(square, corner, notched, beside);
    assertThat(defects).hasSize(1);
    assertThat(defects.get(0).kind()).isEqualTo(Defect.Kind.DOUBLED);
    assertThat(defects.get(0).sizeMm()).isEqualTo(40, within(0.001));
    assertThat(defects.get(0).at()).isEqualTo(new Point(10.0001, 10));
  }

  @Test
  void tolerancesGrowWithTheDrawingAndStop() {
    assertThat(Tolerances.of(1000)).isEqualTo(new Tolerances(0.01, 0.1, 0.02));
    Tolerances small = Tolerances.of(10);
    assertThat(small.joinMm()).isEqualTo(0.001, within(1e-15));
    assertThat(small.gapMm()).isEqualTo(0.01, within(1e-15));
    assertThat(small.chordMm()).isEqualTo(0.001, within(1e-15));
    assertThat(Tolerances.of(0).gapMm()).isPositive();
  }

  @Test
  void ringsHoldAndMeet() {
    Ring outer = Ring.of(rectangle(0, 0, 100, 50), 0.1);
    Ring inner = Ring.of(rectangle(10, 10, 20, 20), 0.1);
    Ring beside = Ring.of(rectangle(200, 10, 20, 20), 0.1);
    Ring across = Ring.of(rectangle(90, 10, 20, 20), 0.1);
    assertThat(outer.holds(inner)).isTrue();
    assertThat(inner.holds(outer)).isFalse();
    assertThat(outer.holds(beside)).isFalse();
    assertThat(outer.holds(outer)).isFalse();
    assertThat(outer.meets(across)).isTrue();
    assertThat(outer.meets(inner)).isFalse();
    assertThat(outer.holds(new Point(50, 25))).isTrue();
    assertThat(outer.holds(new Point(150, 25))).isFalse();
    assertThat(outer.distance(new Point(103, 54))).isEqualTo(5, EXACT);
    assertThat(outer.polygon().getArea()).isEqualTo(5000, EXACT);
    assertThat(outer.area).isEqualTo(5000, EXACT);
    Contour lens =
        new Contour(
            List.of(
                new Segment(new Point(0, 0), new Point(10, 0)),
                new Segment(new Point(10, 0), new Point(0, 0))),
            "line there and back");
    assertThat(Ring.of(lens, 0.1).line.getNumPoints()).isEqualTo(4);
  }

  /** A polynomial of degree 31 is met by one panel, a kink and a near pole by halving. */
  @Test
  void quadratureMeetsWhatIsKnown() {
    assertThat(Quadrature.panel(x -> Math.pow(x, 31), 0, 1)).isEqualTo(1 / 32.0, within(1e-14));
    assertThat(Quadrature.panel(x -> 1, 2, 5)).isEqualTo(3, within(1e-13));
    assertThat(Quadrature.integral(x -> Math.abs(x - 0.3), 0, 1))
        .isEqualTo((0.09 + 0.49) / 2, within(1e-8));
    assertThat(Quadrature.integral(x -> 1 / (x * x + 1e-4), -1, 2))
        .isEqualTo(100 * (Math.atan(200) + Math.atan(100)), within(1e-6));
    assertThat(Quadrature.integral(Math::sin, Math.PI, 0)).isEqualTo(-2, within(1e-12));
  }

  /** A smooth curve takes three panels of 16 places and no more. */
  @Test
  void smoothCurvesAreNotHalvedInVain() {
    int[] asked = {0};
    Quadrature.integral(
        x -> {
          asked[0]++;
          return Math.cos(x);
        },
        0,
        1);
    assertThat(asked[0]).isEqualTo(3 * 16);
  }
}
