package spangle.part.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import spangle.part.ShapeException;

class LayoutTest {
  static Stroke cut(Curve curve) {
    return Stroke.of(curve, Stroke.Role.CUT, "test");
  }

  static Segment line(double x1, double y1, double x2, double y2) {
    return new Segment(new Point(x1, y1), new Point(x2, y2));
  }

  static List<Stroke> rectangle(double x, double y, double w, double h) {
    return new ArrayList<>(
        List.of(
            cut(line(x, y, x + w, y)),
            cut(line(x + w, y, x + w, y + h)),
            cut(line(x, y + h, x + w, y + h)),
            cut(line(x, y, x, y + h))));
  }

  private static List<Defect.Kind> kinds(FlatLayout layout) {
    return layout.defects().stream().map(Defect::kind).toList();
  }

  @Test
  void looseLinesInAnyOrderBecomeAnOutlineWithHoles() {
    List<Stroke> strokes = rectangle(0, 0, 160, 120);
    strokes.add(cut(Arc.circle(new Point(30, 30), 5.5)));
    strokes.add(cut(Arc.circle(new Point(130, 90), 5.5)));
    Collections.shuffle(strokes, new Random(3));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(layout.outers()).hasSize(1);
    assertThat(layout.holes()).hasSize(2);
    assertThat(layout.netAreaMm2()).isEqualTo(19200 - 60.5 * Math.PI, within(1e-8));
    assertThat(layout.cutEdgeMm()).isEqualTo(560 + 22 * Math.PI, within(1e-8));
    assertThat(layout.defects()).isEmpty();
  }

  @Test
  void aGapNobodySeesIsClosedAndSaid() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.set(0, cut(line(0.05, 0, 100, 0)));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(kinds(layout)).containsExactly(Defect.Kind.GAP);
    assertThat(layout.defects().get(0).sizeMm()).isEqualTo(0.05, within(1e-9));
    assertThat(layout.netAreaMm2()).isEqualTo(5000, within(1e-6));
  }

  @Test
  void aGapSomebodySeesIsAskedAbout() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.set(0, cut(line(2, 0, 100, 0)));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(kinds(layout)).containsExactly(Defect.Kind.OPEN_CLOSED_FOR_NOW);
    assertThat(layout.defects().get(0).sizeMm()).isEqualTo(2, within(1e-9));
    assertThat(layout.netAreaMm2()).isEqualTo(5000, within(1e-6));
  }

  @Test
  void threeSidesAreNoOutline() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.remove(0);
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(layout.measurable()).isFalse();
    assertThat(kinds(layout)).containsExactly(Defect.Kind.OPEN);
    assertThat(layout.open()).hasSize(3);
  }

  @Test
  void whatIsDrawnTwiceCountsOnce() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.add(cut(line(100, 0, 0, 0)));
    Arc hole = Arc.circle(new Point(20, 20), 5);
    strokes.add(cut(hole));
    strokes.add(cut(hole.reversed()));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(kinds(layout)).containsExactly(Defect.Kind.DOUBLED, Defect.Kind.DOUBLED);
    assertThat(layout.netAreaMm2()).isEqualTo(5000 - 25 * Math.PI, within(1e-8));
    assertThat(layout.contours()).isEqualTo(2);
  }

  @Test
  void aBendLineOnItsLayerIsNoCut() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.add(Stroke.of(line(30, 0, 30, 50), Stroke.Role.BEND, "test"));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(layout.bends()).hasSize(1);
    assertThat(layout.cutEdgeMm()).isEqualTo(300, within(1e-9));
    assertThat(layout.defects()).isEmpty();
  }

  @Test
  void aBrokenLineRightAcrossIsABendAShortOneAHelp() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.add(Stroke.of(line(30, 0, 30, 50), Stroke.Role.BROKEN, "test"));
    strokes.add(Stroke.of(line(60, 20, 60, 30), Stroke.Role.BROKEN, "test"));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(layout.bends()).hasSize(1);
    assertThat(layout.marks()).hasSize(1);
  }

  @Test
  void aLineRightAcrossOnTheCutLayerIsABendThatIsAskedAbout() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.add(cut(line(30, 0, 30, 50)));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(kinds(layout)).containsExactly(Defect.Kind.BEND_ON_CUT);
    assertThat(layout.netAreaMm2()).isEqualTo(5000, within(1e-9));
  }

  /** The same where the outline itself is broken at the ends of the bend line. */
  @Test
  void whereThreeLinesMeetTheOuterBoundaryIsFollowed() {
    List<Stroke> strokes =
        new ArrayList<>(
            List.of(
                cut(line(0, 0, 30, 0)),
                cut(line(30, 0, 100, 0)),
                cut(line(100, 0, 100, 50)),
                cut(line(100, 50, 30, 50)),
                cut(line(30, 50, 0, 50)),
                cut(line(0, 50, 0, 0)),
                cut(line(30, 0, 30, 50))));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(layout.netAreaMm2()).isEqualTo(5000, within(1e-9));
    assertThat(layout.cutEdgeMm()).isEqualTo(300, within(1e-9));
    assertThat(layout.bends()).hasSize(1);
    assertThat(kinds(layout)).contains(Defect.Kind.BRANCH, Defect.Kind.BEND_ON_CUT);
  }

  @Test
  void aBendInTwoPiecesBesideAHoleIsOneBend() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.add(cut(Arc.circle(new Point(30, 25), 5)));
    strokes.add(Stroke.of(line(30, 0, 30, 20), Stroke.Role.BEND, "test"));
    strokes.add(Stroke.of(line(30, 30, 30, 50), Stroke.Role.BEND, "test"));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(layout.bends()).hasSize(1);
    assertThat(layout.bends().get(0).lengthMm()).isEqualTo(50, within(1e-9));
  }

  @Test
  void aFrameRoundThePartIsAskedAbout() {
    List<Stroke> strokes = rectangle(0, 0, 297, 210);
    strokes.addAll(rectangle(10, 10, 277, 190));
    strokes.addAll(rectangle(50, 50, 100, 50));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(kinds(layout)).containsExactly(Defect.Kind.ISLAND);
    assertThat(layout.netAreaMm2()).isEqualTo(297 * 210 - 277 * 190 + 5000, within(1e-6));
  }

  @Test
  void twoOutlinesSideBySideAreAskedAbout() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.addAll(rectangle(200, 0, 10, 10));
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(kinds(layout)).containsExactly(Defect.Kind.SEVERAL_PARTS);
    assertThat(layout.netAreaMm2()).isEqualTo(5100, within(1e-9));
  }

  @Test
  void aContourThatCrossesItselfIsAskedAbout() {
    List<Stroke> strokes =
        List.of(
            cut(line(0, 0, 100, 50)),
            cut(line(100, 50, 100, 0)),
            cut(line(100, 0, 0, 60)),
            cut(line(0, 60, 0, 0)));
    assertThat(kinds(LayoutBuilder.of(strokes))).containsExactly(Defect.Kind.CROSSING);
  }

  @Test
  void holesThatOverlapTheEdgeAreAskedAbout() {
    List<Stroke> strokes = rectangle(0, 0, 100, 50);
    strokes.add(cut(Arc.circle(new Point(100, 25), 5)));
    assertThat(kinds(LayoutBuilder.of(strokes))).contains(Defect.Kind.CROSSING);
  }

  @Test
  void aPerforatedSheetIsRead() {
    List<Stroke> strokes = rectangle(0, 0, 1000, 1000);
    for (int i = 0; i < 50; i++) {
      for (int j = 0; j < 50; j++) {
        strokes.add(cut(Arc.circle(new Point(15 + 19.5 * i, 15 + 19.5 * j), 4)));
      }
    }
    FlatLayout layout = LayoutBuilder.of(strokes);
    assertThat(layout.holes()).hasSize(2500);
    assertThat(layout.netAreaMm2()).isEqualTo(1e6 - 2500 * 16 * Math.PI, within(1e-4));
  }

  @Test
  void contoursTooManyDeepAreRefusedPolitely() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 1; i <= 1_000; i++) {
      strokes.add(cut(Arc.circle(new Point(0, 0), i)));
    }
    assertThatThrownBy(() -> LayoutBuilder.of(strokes))
        .isInstanceOf(ShapeException.class)
        .hasMessageContaining("lying in one another");
  }
}
