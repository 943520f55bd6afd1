package spangle.part.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.measure.Box;
import spangle.part.BendAllowance;
import spangle.part.Folded;

/** Sizes after bending, worked by hand with the bend allowance of DIN 6935 (from memory). */
class FoldingTest {
  /** Outside legs of an angle give this flat length, so the flat length gives the legs back. */
  private static final double SQUARE = BendAllowance.squareBendMm(2);

  private static Contour sheet(double length, double width) {
    Point a = new Point(0, 0);
    Point b = new Point(length, 0);
    Point c = new Point(length, width);
    Point d = new Point(0, width);
    return new Contour(
        List.of(new Segment(a, b), new Segment(b, c), new Segment(c, d), new Segment(d, a)),
        "test");
  }

  private static Bend across(double x, double width, double angle, boolean up) {
    return new Bend(new BendLine(new Point(x, 0), new Point(x, width), "test"), angle, up, 2);
  }

  private static Box folded(Contour sheet, Bend... bends) {
    return Folding.of(sheet, List.of(bends), 2).orElseThrow().sizeMm();
  }

  @Test
  void anAngleHasItsOutsideLegs() {
    // Legs 50 and 30 outside: each flat leg up to the bend line is its own less half the loss.
    Box box = folded(sheet(80 + SQUARE, 40), across(50 + SQUARE / 2, 40, 90, true));
    assertThat(box.lengthMm()).isEqualTo(40, within(1e-9));
    assertThat(List.of(box.middleMm(), box.shortestMm(), box.longestMm()).stream().sorted())
        .hasSize(3);
    assertThat(box.longestMm()).isEqualTo(50, within(1e-9));
    assertThat(box.shortestMm()).isEqualTo(30, within(1e-9));
  }

  @Test
  void aChannelHasItsWebAndFlanges() {
    double flange = 25 + SQUARE / 2;
    double length = 60 + 2 * 25 + 2 * SQUARE;
    Box box =
        folded(
            sheet(length, 100),
            across(flange, 100, 90, true),
            across(length - flange, 100, 90, true));
    assertThat(box.lengthMm()).isEqualTo(100, within(1e-9));
    assertThat(box.widthMm()).isEqualTo(60, within(1e-9));
    assertThat(box.heightMm()).isEqualTo(25, within(1e-9));
  }

  @Test
  void aZedIsTwoFlangesHighLessOneThickness() {
    double flange = 25 + SQUARE / 2;
    double length = 60 + 2 * 25 + 2 * SQUARE;
    Box box =
        folded(
            sheet(length, 100),
            across(flange, 100, 90, true),
            across(length - flange, 100, 90, false));
    assertThat(box.widthMm()).isEqualTo(60, within(1e-9));
    assertThat(box.heightMm()).isEqualTo(25 + 25 - 2, within(1e-9));
  }

  @Test
  void aSlightBendRaisesTheFlangeByItsSine() {
    // 30 degrees, flange of 100 from the bend line; zone and radius move it by less than 2 mm.
    Box box = folded(sheet(300, 50), across(200, 50, 30, true));
    assertThat(box.heightMm()).isEqualTo(2 + 100 * Math.sin(Math.toRadians(30)), within(1.0));
  }

  /**
   * 120 degrees, radius and thickness 2: the zone is 2.0944 x 2.65 = 5.55 mm long, and the round of
   * the bend, 4 mm outside, is what reaches furthest. The flange of 30 mm leans back over the web.
   */
  @Test
  void aSharpBendReachesAsFarAsItsRound() {
    double turned = Math.toRadians(120);
    double zone = turned * 2.65;
    for (boolean up : new boolean[] {true, false}) {
      Box box = folded(sheet(80, 40), across(50, 40, 120, up));
      assertThat(box.lengthMm()).isEqualTo(40, within(1e-6));
      assertThat(box.widthMm()).isEqualTo(50 - zone / 2 + 4, within(1e-6));
      assertThat(box.heightMm())
          .isEqualTo(1 + 3 * 1.5 + (30 - zone / 2) * Math.sin(turned) + 0.5, within(1e-6));
    }
  }

  /**
   * 150 degrees, radius 10, thickness 2: k = 0.65 + 0.5 lg 5 = 0.9995, so the zone is 2.618 x
   * 10.9995 = 28.797 mm and half of it 14.398. The web of 100 mm ends 14.398 mm before its line,
   * and the round reaches 12 mm further: 97.602 mm over all. The flange of 50 - 14.398 = 35.602 mm
   * leaves the round at 1 + 11 + 11 x cos 30 = 21.526 above the underside and rises by 35.602 x sin
   * 30 and half the sheet x cos 30: 40.193 mm.
   */
  @Test
  void aBendBeyondTheSquareIsAsLargeAsItIsDrawnToScale() {
    for (boolean up : new boolean[] {true, false}) {
      Bend bend =
          new Bend(new BendLine(new Point(100, 0), new Point(100, 200), "test"), 150, up, 10);
      Box box = Folding.of(sheet(150, 200), List.of(bend), 2).orElseThrow().sizeMm();
      assertThat(box.lengthMm()).isEqualTo(200, within(1e-6));
      assertThat(box.widthMm()).isEqualTo(97.602, within(2e-3));
      assertThat(box.heightMm()).isEqualTo(40.193, within(2e-3));
    }
  }

  /**
   * Two bends of 120 degrees in a row, radius and thickness 2: the second round lies on a flange
   * that leans, so what reaches furthest is inside its arc. Lines 60 mm apart, zone 2.0944 x 2.65 =
   * 5.550: the centres of the rounds are 54.450 mm apart on a slope of 60 degrees, and each round
   * goes 4 mm further: 4 + 47.155 + 4 mm.
   */
  @Test
  void theRoundOfALeaningFlangeCounts() {
    List<Bend> bends = List.of(across(60, 40, 120, true), across(120, 40, 120, true));
    Box box = Folding.of(sheet(180, 40), bends, 2).orElseThrow().sizeMm();
    assertThat(box.lengthMm()).isEqualTo(40, within(1e-6));
    double side = 60 - Math.toRadians(120) * 2.65;
    assertThat(box.heightMm()).isEqualTo(4 + side * Math.sin(Math.toRadians(60)) + 4, within(1e-6));
  }

  /**
   * 60 degrees, 4 mm outside: two tangents of 30 degrees each, which meet the radii of 15 and 45
   * degrees at 4 / cos 15. The bend line lies along x then, the flange towards -y.
   */
  @Test
  void theRoundOfABendIsHeldByItsTangents() {
    double zone = Math.toRadians(60) * 2.65;
    double reach = 4 / Math.cos(Math.toRadians(15));
    for (boolean up : new boolean[] {true, false}) {
      Folded part = Folding.of(sheet(80, 40), List.of(across(50, 40, 60, up)), 2).orElseThrow();
      for (double degrees : new double[] {15, 45}) {
        double y = -50 + zone / 2 - reach * Math.sin(Math.toRadians(degrees));
        double z = (up ? 1 : -1) * (3 - reach * Math.cos(Math.toRadians(degrees)));
        for (double x : new double[] {0, 40}) {
          assertThat(part.corners())
              .anyMatch(
                  c ->
                      Math.abs(c.xMm() - x) < 1e-5
                          && Math.abs(c.yMm() - y) < 1e-5
                          && Math.abs(c.zMm() - z) < 1e-5);
        }
      }
      // Four of the round; two faces of five points of a closed outline, above and below.
      assertThat(part.corners()).hasSize(4 + 2 * 5 * 2);
    }
  }

  @Test
  void aBendLineInsideTheSheetBendsNothing() {
    Bend inside = new Bend(new BendLine(new Point(40, 20), new Point(60, 20), "test"), 90, true, 2);
    assertThat(Folding.of(sheet(100, 50), List.of(inside), 2)).isEqualTo(Optional.empty());
  }

  @Test
  void theAxesFollowTheLongestBendWhereverThePartLies() {
    Affine turn = Affine.turn(33);
    Bend bend = across(50, 40, 90, true);
    BendLine line = bend.line();
    Bend turned =
        new Bend(
            new BendLine(turn.point(line.start()), turn.point(line.end()), "test"), 90, true, 2);
    Box straight = folded(sheet(80, 40), bend);
    Box other = folded(sheet(80, 40).transformed(turn), turned);
    assertThat(other.lengthMm()).isEqualTo(straight.lengthMm(), within(1e-6));
    assertThat(other.longestMm()).isEqualTo(straight.longestMm(), within(1e-6));
    assertThat(other.shortestMm()).isEqualTo(straight.shortestMm(), within(1e-6));
  }

  private static double reach(Folded part, double y, double z) {
    return part.corners().stream().mapToDouble(c -> c.yMm() * y + c.zMm() * z).max().orElseThrow();
  }

  /**
   * An angle of 50 and 30 mm, 2 mm thick. Measured from the sharp heel at (0, 0) along (30, 50) /
   * 58.31, its farthest point is the inner corner of the long leg's tip, (50, 2): 1600 / 58.31 =
   * 27.44 mm; the box would reach (50, 30): 51.45 mm. Towards the heel the round of 4 mm outside
   * stays 4 x (1.4142 - 1) = 1.66 mm short of it, and no point of the hull may stay shorter.
   */
  @Test
  void theHullHoldsTheLegsAndTheRoundOfTheBend() {
    Bend bend = across(50 + SQUARE / 2, 40, 90, true);
    Folded part = Folding.of(sheet(80 + SQUARE, 40), List.of(bend), 2).orElseThrow();
    assertThat(reach(part, 1, 0) + reach(part, -1, 0)).isEqualTo(50, within(1e-9));
    assertThat(reach(part, 0, 1) + reach(part, 0, -1)).isEqualTo(30, within(1e-9));
    double long58 = Math.hypot(30, 50);
    double root = Math.sqrt(0.5);
    double farthest = Double.MAX_VALUE;
    double shortOfHeel = Double.MAX_VALUE;
    for (int side : new int[] {1, -1}) {
      double heelY = side * reach(part, side, 0);
      double heelZ = -reach(part, 0, -1);
      double y = -side * 30 / long58;
      double z = 50 / long58;
      double from = reach(part, y, z) - (heelY * y + heelZ * z);
      if (from < farthest) {
        farthest = from;
        shortOfHeel = (heelY * side - heelZ) * root - reach(part, side * root, -root);
      }
    }
    assertThat(farthest).isEqualTo(1600 / long58, within(1e-9));
    assertThat(shortOfHeel).isBetween(0.0, 4 * (Math.sqrt(2) - 1) + 1e-9);
  }

  /**
   * A bend line drawn past the sheet bends no more than the sheet: 40 mm wide, whatever it says.
   */
  @Test
  void aBendLineDrawnTooLongMakesNothingWider() {
    BendLine line = new BendLine(new Point(50, -30), new Point(50, 70), "test");
    Folded part = Folding.of(sheet(80, 40), List.of(new Bend(line, 60, true, 2)), 2).orElseThrow();
    assertThat(part.corners().stream().mapToDouble(Folded.Corner::xMm).max().orElseThrow())
        .isEqualTo(
            part.corners().stream().mapToDouble(Folded.Corner::xMm).min().orElseThrow() + 40,
            within(1e-9));
  }
}
