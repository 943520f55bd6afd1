package spangle.part.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import spangle.part.Folded;

/** A mesh lies in the hull of the corners that stand for it, seen from wherever. */
class AroundTest {

  @Test
  void aPlainBodyKeepsItsCorners() {
    Triangles wedge = new Triangles(2);
    wedge.add(new double[] {0, 0, 0, 10, 0, 0, 0, 5, 0});
    wedge.add(new double[] {0, 0, 7, 10, 0, 0, 0, 5, 0});

    assertThat(Around.of(wedge))
        .containsExactly(
            new Folded.Corner(0, 0, 0),
            new Folded.Corner(10, 0, 0),
            new Folded.Corner(0, 5, 0),
            new Folded.Corner(0, 0, 7));
  }

  /** How far points reach in a direction. */
  private static double reach(List<double[]> points, double[] way) {
    return points.stream()
        .mapToDouble(p -> p[0] * way[0] + p[1] * way[1] + p[2] * way[2])
        .max()
        .orElseThrow();
  }

  private static double[] way(Random random) {
    double[] way = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
    double length = Math.hypot(Math.hypot(way[0], way[1]), way[2]);
    return new double[] {way[0] / length, way[1] / length, way[2] / length};
  }

  private static List<double[]> points(List<Folded.Corner> corners) {
    return corners.stream().map(c -> new double[] {c.xMm(), c.yMm(), c.zMm()}).toList();
  }

  /** Egg-shaped heaps of many corners with their longest way along any axis. */
  @Property(tries = 30)
  void noCornerOfAFineMeshStandsOut(
      @ForAll @IntRange(min = 0, max = 2) int longest,
      @ForAll @IntRange(min = 70, max = 900) int triangles,
      @ForAll long seed) {
    Random random = new Random(seed);
    List<double[]> all = new ArrayList<>();
    Triangles mesh = new Triangles(triangles);
    for (int t = 0; t < triangles; t++) {
      double[] nine = new double[9];
      for (int c = 0; c < 3; c++) {
        double[] on = way(random);
        for (int axis = 0; axis < 3; axis++) {
          nine[3 * c + axis] = 300 * on[axis] * (axis == longest ? 4 : 1) + 17 * axis;
        }
        all.add(new double[] {nine[3 * c], nine[3 * c + 1], nine[3 * c + 2]});
      }
      mesh.add(nine);
    }
    List<Folded.Corner> around = Around.of(mesh);
    assertThat(around).hasSizeLessThanOrEqualTo(2 * Around.SLICES * Around.SIDES);
    List<double[]> standing = points(around);
    for (int i = 0; i < 200; i++) {
      double[] way = way(random);
      assertThat(reach(all, way)).isLessThanOrEqualTo(reach(standing, way) + 1e-9);
    }
    // Square to the slices the outline is that of the mesh, grown by the polygon at most.
    double[] across = new double[3];
    across[(longest + 1) % 3] = 1;
    assertThat(reach(standing, across))
        .isCloseTo(reach(all, across), within(300 * (1 / Math.cos(Math.PI / Around.SIDES) - 1)));
  }

  /** A pipe drawn with two fine ends only: no slice between them, and no corner beyond them. */
  @Test
  void aRoundBodyGrowsByThreeThousandthsAtMost() {
    int sides = 360;
    Triangles pipe = new Triangles(sides);
    for (int i = 0; i < sides; i++) {
      double a = 2 * Math.PI * i / sides;
      double b = 2 * Math.PI * (i + 1) / sides;
      double y = 100 * Math.cos(a);
      double z = 100 * Math.sin(a);
      pipe.add(new double[] {0, y, z, 0, 100 * Math.cos(b), 100 * Math.sin(b), 3000, y, z});
    }
    List<double[]> standing = points(Around.of(pipe));
    Random random = new Random(3);
    for (int i = 0; i < 100; i++) {
      double angle = random.nextDouble() * 2 * Math.PI;
      double[] way = {0, Math.cos(angle), Math.sin(angle)};
      assertThat(reach(standing, way)).isBetween(99.9, 100.4);
    }
    assertThat(reach(standing, new double[] {1, 0, 0})).isEqualTo(3000);
    assertThat(reach(standing, new double[] {-1, 0, 0})).isZero();
  }
}
