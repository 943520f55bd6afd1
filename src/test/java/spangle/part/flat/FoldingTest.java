package spangle.part.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.measure.Box;
import spangle.part.BendAllowance;

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
    return Folding.sizeMm(sheet, List.of(bends), 2).orElseThrow();
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

  @Test
  void aBendLineInsideTheSheetBendsNothing() {
    Bend inside = new Bend(new BendLine(new Point(40, 20), new Point(60, 20), "test"), 90, true, 2);
    assertThat(Folding.sizeMm(sheet(100, 50), List.of(inside), 2)).isEqualTo(Optional.empty());
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
}
