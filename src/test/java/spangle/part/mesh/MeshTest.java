package spangle.part.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import spangle.measure.Box;
import spangle.part.ShapeException;
import spangle.part.Solid;

/** Bodies of triangles whose surface and volume are known by heart: boxes and corners of boxes. */
class MeshTest {
  private static final Offset<Double> EXACT = within(1e-9);

  /** Triangles in the making. */
  private static final class Body {
    final List<double[]> list = new ArrayList<>();

    Body triangle(double... corners) {
      list.add(corners);
      return this;
    }

    /** A box from a corner; faces outwards, or inwards for a hollow. */
    Body box(double x, double y, double z, double l, double w, double h, boolean outwards) {
      int[][] faces = {
        {0, 2, 3}, {0, 3, 1}, {4, 5, 7}, {4, 7, 6}, {0, 1, 5}, {0, 5, 4},
        {2, 6, 7}, {2, 7, 3}, {0, 4, 6}, {0, 6, 2}, {1, 3, 7}, {1, 7, 5}
      };
      for (int[] face : faces) {
        double[] corners = new double[9];
        for (int i = 0; i < 3; i++) {
          int at = face[outwards ? i : 2 - i];
          corners[3 * i] = x + ((at & 1) != 0 ? l : 0);
          corners[3 * i + 1] = y + ((at & 2) != 0 ? w : 0);
          corners[3 * i + 2] = z + ((at & 4) != 0 ? h : 0);
        }
        list.add(corners);
      }
      return this;
    }

    /** The pyramid under three unit steps from a corner: a sixth of a cube. */
    Body pyramid(double x, double y, double z, double side) {
      double[] o = {x, y, z};
      double[] a = {x + side, y, z};
      double[] b = {x, y + side, z};
      double[] c = {x, y, z + side};
      return face(o, b, a).face(o, a, c).face(o, c, b).face(a, b, c);
    }

    Body face(double[] a, double[] b, double[] c) {
      return triangle(a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]);
    }

    MeshFacts facts() {
      Triangles triangles = new Triangles(1);
      list.forEach(triangles::add);
      return MeshFacts.of(triangles);
    }

    Solid solid() {
      return facts().solid().orElseThrow();
    }
  }

  @Test
  void aBoxAnywhere() {
    MeshFacts facts = new Body().box(10, -20, 30, 40, 30, 20, true).facts();

    assertThat(facts.triangles()).isEqualTo(12);
    assertThat(facts.surfaceMm2()).isEqualTo(2 * (1200 + 800 + 600), EXACT);
    assertThat(facts.sizeMm()).contains(new Box(40, 30, 20));
    assertThat(facts.bodies()).isEqualTo(1);
    assertThat(facts.openEdges()).isZero();
    assertThat(facts.turnedEdges()).isZero();
    assertThat(facts.flatTriangles()).isZero();
    assertThat(facts.insideOut()).isFalse();
    assertThat(facts.doubtfulVoids()).isZero();
    assertThat(facts.welded()).isFalse();
    Solid solid = facts.solid().orElseThrow();
    assertThat(solid.metalMm3()).isEqualTo(24_000, EXACT);
    assertThat(solid.outerMm2()).isEqualTo(5200, EXACT);
    assertThat(solid.voidMm2()).isZero();
    assertThat(solid.voidMm3()).isZero();
    assertThat(solid.voids()).isZero();
    assertThat(solid.envelopeMm()).isEqualTo(new Box(40, 30, 20));
  }

  /** Four faces: three of 18 and one of side 6 root 2; a sixth of 216. */
  @Test
  void aPyramid() {
    Solid solid = new Body().pyramid(5, 7, 11, 6).solid();

    assertThat(solid.metalMm3()).isEqualTo(36, EXACT);
    assertThat(solid.outerMm2()).isEqualTo(3 * 18 + Math.sqrt(3) / 4 * 72, EXACT);
  }

  @Test
  void twoBodiesSideBySideAreTwo() {
    MeshFacts facts =
        new Body().box(0, 0, 0, 10, 10, 10, true).box(20, 0, 0, 10, 10, 20, true).facts();

    assertThat(facts.bodies()).isEqualTo(2);
    assertThat(facts.solid().orElseThrow().metalMm3()).isEqualTo(3000, EXACT);
    assertThat(facts.solid().orElseThrow().voids()).isZero();
  }

  /** In each of the six directions a neighbour whose bounds reach past is not inside. */
  @Test
  void aNeighbourIsNotInside() {
    double[][] steps = {{15, 0, 0}, {-15, 0, 0}, {0, 15, 0}, {0, -15, 0}, {0, 0, 15}, {0, 0, -15}};
    for (double[] step : steps) {
      MeshFacts facts =
          new Body()
              .box(0, 0, 0, 10, 10, 10, true)
              .box(step[0] + 1, step[1] + 1, step[2] + 1, 8, 8, 8, true)
              .facts();
      assertThat(facts.bodies()).isEqualTo(2);
      assertThat(facts.doubtfulVoids()).isZero();
    }
  }

  @Test
  void aHollowIsTakenOffTheMetal() {
    MeshFacts facts =
        new Body().box(0, 0, 0, 40, 30, 20, true).box(10, 10, 5, 10, 10, 10, false).facts();
    Solid solid = facts.solid().orElseThrow();

    assertThat(facts.bodies()).isEqualTo(1);
    assertThat(facts.doubtfulVoids()).isZero();
    assertThat(facts.insideOut()).isFalse();
    assertThat(solid.metalMm3()).isEqualTo(23_000, EXACT);
    assertThat(solid.voidMm3()).isEqualTo(1000, EXACT);
    assertThat(solid.outerMm2()).isEqualTo(5200, EXACT);
    assertThat(solid.voidMm2()).isEqualTo(600, EXACT);
    assertThat(solid.voids()).isEqualTo(1);
  }

  /** A hollow in every corner of a cube, and a core in one of them. */
  @Test
  void hollowsWithABodyInOne() {
    Body body = new Body().box(0, 0, 0, 100, 100, 100, true);
    for (int i = 0; i < 8; i++) {
      body.box(
          5 + ((i & 1) != 0 ? 60 : 0),
          5 + ((i & 2) != 0 ? 60 : 0),
          5 + ((i & 4) != 0 ? 60 : 0),
          30,
          30,
          30,
          false);
    }
    MeshFacts facts = body.box(70, 70, 70, 10, 10, 10, true).facts();
    Solid solid = facts.solid().orElseThrow();

    assertThat(solid.voids()).isEqualTo(8);
    assertThat(solid.metalMm3()).isEqualTo(1e6 - 8 * 27_000 + 1000, within(1e-6));
    assertThat(solid.voidMm3()).isEqualTo(8 * 27_000 - 1000, within(1e-6));
    assertThat(facts.bodies()).isEqualTo(1);
    assertThat(facts.doubtfulVoids()).isZero();
  }

  /** Inside out as a whole: its hollow then faces outwards and is no doubt. */
  @Test
  void aBodyInsideOut() {
    MeshFacts facts =
        new Body().box(0, 0, 0, 40, 30, 20, false).box(10, 10, 5, 10, 10, 10, true).facts();

    assertThat(facts.insideOut()).isTrue();
    assertThat(facts.doubtfulVoids()).isZero();
    assertThat(facts.solid().orElseThrow().metalMm3()).isEqualTo(23_000, EXACT);
  }

  @Test
  void aHollowThatFacesOutwardsIsDoubtful() {
    MeshFacts facts =
        new Body()
            .box(0, 0, 0, 40, 30, 20, true)
            .box(2, 2, 2, 10, 10, 10, true)
            .box(20, 2, 2, 10, 10, 10, true)
            .facts();

    assertThat(facts.doubtfulVoids()).isEqualTo(2);
    assertThat(facts.solid().orElseThrow().voids()).isEqualTo(2);
  }

  /** A body in the bounds of another but outside it: two rods of an L around an empty corner. */
  @Test
  void withinTheBoundsIsNotWithinTheBody() {
    // The pyramid's far corner is empty: its slope passes 10 + 10 + 10 = 30 along the diagonal.
    MeshFacts facts = new Body().pyramid(0, 0, 0, 30).box(20, 20, 20, 4, 4, 4, true).facts();

    assertThat(facts.bodies()).isEqualTo(2);
    assertThat(facts.solid().orElseThrow().metalMm3()).isEqualTo(4500 + 64, EXACT);
    MeshFacts inside = new Body().pyramid(0, 0, 0, 30).box(2, 2, 2, 4, 4, 4, true).facts();
    assertThat(inside.bodies()).isEqualTo(1);
    assertThat(inside.solid().orElseThrow().metalMm3()).isEqualTo(4500 - 64, EXACT);
  }

  @Test
  void aMissingTriangleLeavesItOpen() {
    Body body = new Body().box(0, 0, 0, 40, 30, 20, true);
    body.list.remove(4);
    MeshFacts facts = body.facts();

    assertThat(facts.openEdges()).isEqualTo(3);
    assertThat(facts.turnedEdges()).isZero();
    assertThat(facts.solid()).isEmpty();
    assertThat(facts.surfaceMm2()).isEqualTo(5200 - 400, EXACT);
    assertThat(facts.welded()).isFalse();
    assertThat(facts.insideOut()).isFalse();
  }

  @Test
  void aTurnedTriangleIsNamed() {
    Body body = new Body().box(0, 0, 0, 40, 30, 20, true);
    double[] t = body.list.remove(4);
    body.triangle(t[0], t[1], t[2], t[6], t[7], t[8], t[3], t[4], t[5]);
    MeshFacts facts = body.facts();

    assertThat(facts.openEdges()).isZero();
    assertThat(facts.turnedEdges()).isEqualTo(3);
    assertThat(facts.solid()).isEmpty();
  }

  /** Two cubes that share an edge: four triangles meet there, two each way. */
  @Test
  void anEdgeOfFourTrianglesIsClosed() {
    MeshFacts facts =
        new Body().box(0, 0, 0, 10, 10, 10, true).box(10, 10, 0, 10, 10, 10, true).facts();

    assertThat(facts.openEdges()).isZero();
    assertThat(facts.turnedEdges()).isZero();
    assertThat(facts.solid().orElseThrow().metalMm3()).isEqualTo(2000, EXACT);
  }

  /** Corners nearer than two millionths of the size were one corner: 100 mm, 0.2 um. */
  @Test
  void cornersAHairApartAreOne() {
    MeshFacts welded = gapped(0.00004);
    assertThat(welded.welded()).isTrue();
    assertThat(welded.solid().orElseThrow().metalMm3()).isEqualTo(1e6, within(100.0));
    MeshFacts open = gapped(0.01);
    assertThat(open.welded()).isFalse();
    assertThat(open.solid()).isEmpty();
    assertThat(open.openEdges()).isPositive();
  }

  private static MeshFacts gapped(double hairMm) {
    Body body = new Body().box(0, 0, 0, 100, 100, 100, true);
    body.list.get(0)[0] += hairMm;
    return body.facts();
  }

  @Test
  void minusZeroIsZero() {
    Body body = new Body().box(0, 0, 0, 10, 10, 10, true);
    body.list.get(0)[0] = -0.0;

    assertThat(body.facts().openEdges()).isZero();
    assertThat(body.facts().welded()).isFalse();
  }

  @Test
  void trianglesWithoutAreaAreLeftOut() {
    MeshFacts facts =
        new Body()
            .box(0, 0, 0, 10, 10, 10, true)
            .triangle(0, 0, 0, 0, 0, 0, 10, 0, 0)
            .triangle(0, 0, 0, 10, 0, 0, 10, 0, 0)
            .triangle(10, 0, 0, 0, 0, 0, 10, 0, 0)
            .facts();

    assertThat(facts.flatTriangles()).isEqualTo(3);
    assertThat(facts.triangles()).isEqualTo(12);
    assertThat(facts.solid().orElseThrow().metalMm3()).isEqualTo(1000, EXACT);
  }

  /** A sheet of no thickness in each plane is no body, and nothing at all is none either. */
  @Test
  void aSheetWithoutThicknessIsNoBody() {
    double[] o = {0, 0, 0};
    double[][][] sheets = {
      {{10, 0, 0}, {0, 10, 0}}, {{10, 0, 0}, {0, 0, 10}}, {{0, 10, 0}, {0, 0, 10}}
    };
    for (double[][] sheet : sheets) {
      MeshFacts facts = new Body().face(o, sheet[0], sheet[1]).face(o, sheet[1], sheet[0]).facts();
      assertThat(facts.sizeMm()).isEmpty();
      assertThat(facts.solid()).isEmpty();
      assertThat(facts.surfaceMm2()).isEqualTo(100, EXACT);
    }
    MeshFacts nothing = new Body().facts();
    assertThat(nothing.triangles()).isZero();
    assertThat(nothing.bodies()).isZero();
    assertThat(nothing.solid()).isEmpty();
  }

  @Test
  void moreBodiesThanAnybodyDrawsAreRefused() {
    Body body = new Body();
    for (int i = 0; i < 2000; i++) {
      body.pyramid(3 * i, 0, 0, 1);
    }
    assertThat(body.facts().bodies()).isEqualTo(2000);
    body.pyramid(-3, 0, 0, 1);
    assertThatThrownBy(body::facts)
        .isInstanceOf(ShapeException.class)
        .hasMessageContaining("number of separate surfaces 2001");
  }

  @Test
  void roomGrowsWithTheTriangles() {
    Triangles triangles = new Triangles(0);
    for (int i = 0; i < 5; i++) {
      triangles.add(new double[] {i, 0, 0, i + 1, 0, 0, i, 1, 0});
    }

    assertThat(triangles.count()).isEqualTo(5);
    assertThat(triangles.at(4, 1, 0)).isEqualTo(5);
    assertThat(triangles.areaMm2(3)).isEqualTo(0.5, EXACT);
  }

  @Test
  void areaAndVolumeOfALeaningTriangle() {
    Triangles triangles = new Triangles(1);
    triangles.add(new double[] {1, 2, 3, 4, 2, 3, 1, 6, 5});

    // Sides (3, 0, 0) and (0, 4, 2): their product is (0, -6, 12).
    assertThat(triangles.normal(0)).containsExactly(0, -6, 12);
    assertThat(triangles.areaMm2(0)).isEqualTo(Math.sqrt(180) / 2, EXACT);
    // From the top (0, 1, 1): (0 (1 - 0) - 6 (2 - 1) + 12 (3 - 1)) / 6.
    assertThat(triangles.volumeMm3(0, new double[] {0, 1, 1})).isEqualTo(3, EXACT);
  }
}
