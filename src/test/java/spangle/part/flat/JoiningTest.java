package spangle.part.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loose ends that somebody meant to meet. */
class JoiningTest {
  private static Segment line(double x1, double y1, double x2, double y2) {
    return new Segment(new Point(x1, y1), new Point(x2, y2));
  }

  /** Every line by itself: no two of them share a joint. */
  private static Chains loose(Curve... curves) {
    List<Chains.Edge> edges = new ArrayList<>();
    for (int i = 0; i < curves.length; i++) {
      edges.add(new Chains.Edge(curves[i], "line " + i, 2 * i, 2 * i + 1));
    }
    Chains chains = new Chains();
    chains.walk(edges);
    return chains;
  }

  @Test
  void aSquareWithAGapAtEachCornerIsClosedWhicheverWayItsLinesRun() {
    Chains chains =
        loose(
            line(0.05, 0, 10, 0),
            line(10, 10, 10, 0.05),
            line(10, 10.05, 0, 10),
            line(0, 0, 0, 9.95));
    chains.closeGaps(0.1);

    assertThat(chains.open()).isEmpty();
    assertThat(chains.contours).hasSize(1);
    assertThat(chains.contours.get(0).curves()).hasSize(4);
    assertThat(Math.abs(chains.contours.get(0).areaMm2())).isEqualTo(100, within(1.5));
    assertThat(chains.defects).hasSize(4).allMatch(d -> d.kind() == Defect.Kind.GAP);
    assertThat(chains.defects)
        .extracting(Defect::at)
        .contains(new Point(0.025, 0), new Point(10, 0.025));
    assertThat(chains.contours.get(0).label()).isEqualTo("line 0");
  }

  /**
   * The free ends are those of the first and the last line, the first one running the wrong way.
   */
  @Test
  void anOpenRowStaysOneChainFromEndToEnd() {
    Chains chains = loose(line(5, 0, 0, 0), line(15.05, 0, 10.05, 0), line(5.05, 0, 10, 0));
    chains.closeGaps(0.1);

    assertThat(chains.contours).isEmpty();
    assertThat(chains.open()).hasSize(1);
    Chains.Chain row = chains.open().get(0);
    assertThat(row.curves()).hasSize(3);
    assertThat(row.gapMm()).isEqualTo(15.05, within(1e-9));
    assertThat(row.lengthMm()).isEqualTo(5 + 4.95 + 5, within(1e-9));
    for (int i = 1; i < 3; i++) {
      assertThat(row.curves().get(i).start().distance(row.curves().get(i - 1).end()))
          .isLessThan(0.06);
    }
    assertThat(chains.defects).hasSize(2);
  }

  @Test
  void theNearestEndIsTaken() {
    Chains chains = loose(line(0, 0, 10, 0), line(10.08, 0, 20, 0), line(10.03, 0, 10, 9));
    chains.closeGaps(0.1);

    assertThat(chains.defects).hasSize(1);
    assertThat(chains.defects.get(0).sizeMm()).isEqualTo(0.03, within(1e-9));
    assertThat(chains.open()).hasSize(2);
  }

  @Test
  void aWiderGapStaysOpen() {
    Chains chains = loose(line(0, 0, 10, 0), line(10.2, 0, 20, 0));
    chains.closeGaps(0.1);

    assertThat(chains.defects).isEmpty();
    assertThat(chains.open()).hasSize(2);
    chains.closeGaps(0.2 + 1e-9);
    assertThat(chains.open()).hasSize(1);
    loose().closeGaps(1);
  }

  /** 350 degrees of 0.5 mm: a gap of 0.087 mm on 3.05 mm; three quarters of 0.02 mm are a speck. */
  @Test
  void aRingIsClosedOnItselfAndASpeckIsNot() {
    Chains ring = loose(Arc.circle(new Point(0, 0), 0.5, 0, Math.toRadians(350)));
    ring.closeGaps(0.1);
    assertThat(ring.contours).hasSize(1);
    assertThat(ring.open()).isEmpty();
    Chains speck = loose(Arc.circle(new Point(0, 0), 0.02, 0, 1.5 * Math.PI));
    speck.closeGaps(0.1);
    assertThat(speck.contours).isEmpty();
    assertThat(speck.open()).hasSize(1);
  }

  /** Lines that share joints are walked in both directions from where the walk begins. */
  @Test
  void aWalkGoesOnBothWays() {
    Chains chains = new Chains();
    chains.walk(
        List.of(
            new Chains.Edge(line(10, 0, 20, 0), "middle", 1, 2),
            new Chains.Edge(line(30, 0, 20, 0), "right", 3, 2),
            new Chains.Edge(line(0, 0, 10, 0), "left", 0, 1),
            new Chains.Edge(line(0, 0, -5, 0), "far left", 0, 4)));

    assertThat(chains.open()).hasSize(1);
    Chains.Chain row = chains.open().get(0);
    assertThat(row.start()).isEqualTo(new Point(-5, 0));
    assertThat(row.end()).isEqualTo(new Point(30, 0));
    assertThat(row.label()).isEqualTo("middle");
  }

  @Test
  void pointsWithinTheToleranceAreOne() {
    Snap snap = new Snap(0.01);
    assertThat(snap.number(new Point(0, 0))).isZero();
    assertThat(snap.number(new Point(0.005, 0))).isZero();
    assertThat(snap.number(new Point(-0.002, -0.002))).isZero();
    assertThat(snap.number(new Point(0.012, 0))).isEqualTo(1);
    // 0.007 from the first and 0.005 from the second: the nearer one.
    assertThat(snap.number(new Point(0.007, 0))).isEqualTo(1);
    assertThat(snap.number(new Point(0.005, 0))).isZero();
    assertThat(snap.number(new Point(-0.0095, 0.0095))).isEqualTo(2);
    assertThat(snap.number(new Point(0, -0.0099))).isZero();
    assertThat(snap.number(new Point(0.0199, 0.009))).isEqualTo(3);
    assertThat(snap.count()).isEqualTo(4);
    assertThat(snap.point(1)).isEqualTo(new Point(0.012, 0));
  }

  @Test
  void distanceFromABendLineEndsAtItsEnds() {
    BendLine line = new BendLine(new Point(10, 10), new Point(30, 10), "test");
    assertThat(line.distance(new Point(20, 14))).isEqualTo(4, within(1e-12));
    assertThat(line.distance(new Point(33, 14))).isEqualTo(5, within(1e-12));
    assertThat(line.distance(new Point(7, 6))).isEqualTo(5, within(1e-12));
    assertThat(line.lengthMm()).isEqualTo(20, within(1e-12));
    assertThat(line.alignedWith(new BendLine(new Point(50, 10.04), new Point(60, 9.96), ""), 0.05))
        .isTrue();
    assertThat(line.alignedWith(new BendLine(new Point(50, 10.06), new Point(60, 10), ""), 0.05))
        .isFalse();
    assertThat(line.alignedWith(new BendLine(new Point(50, 10), new Point(60, 9.9), ""), 0.05))
        .isFalse();
    BendLine spot = new BendLine(new Point(1, 1), new Point(1, 1), "spot");
    assertThat(spot.distance(new Point(4, 5))).isEqualTo(5, within(1e-12));
    assertThat(spot.alignedWith(line, 5)).isFalse();
  }
}
