package spangle.part.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import spangle.part.Folded;

class OutlineTest {

  /** A pyramid over a square: all five corners stand in one outline or another. */
  @Test
  void keepsWhatAnOutlineNeeds() {
    Triangles pyramid = new Triangles(2);
    pyramid.add(new double[] {0, 0, 0, 10, 0, 0, 5, 5, 8});
    pyramid.add(new double[] {10, 10, 0, 0, 10, 0, 5, 5, 8});

    assertThat(Outline.of(pyramid))
        .contains(
            new Folded.Corner(0, 0, 0),
            new Folded.Corner(10, 0, 0),
            new Folded.Corner(10, 10, 0),
            new Folded.Corner(0, 10, 0),
            new Folded.Corner(5, 5, 8));
  }

  /** Corners in heaps, as in a large file: the outermost eight stay, nothing inside them does. */
  @Test
  void leavesOutWhatLiesInside() {
    Random random = new Random(7);
    Triangles heap = new Triangles(60_000);
    for (int i = 0; i < 60_000; i++) {
      double[] nine = new double[9];
      for (int k = 0; k < 9; k++) {
        nine[k] = 1 + 8 * random.nextDouble();
      }
      heap.add(nine);
    }
    heap.add(new double[] {0, 0, 0, 10, 0, 0, 10, 10, 0});
    heap.add(new double[] {0, 10, 0, 0, 0, 10, 10, 0, 10});
    heap.add(new double[] {10, 10, 10, 0, 10, 10, 5, 5, 5});

    List<Folded.Corner> corners = Outline.of(heap);
    // Four corners of a square along each axis; which end of an edge is seen does not matter.
    assertThat(corners).hasSize(12);
    assertThat(corners)
        .allMatch(
            c ->
                List.of(0.0, 10.0).contains(c.xMm())
                    && List.of(0.0, 10.0).contains(c.yMm())
                    && List.of(0.0, 10.0).contains(c.zMm()));
  }
}
