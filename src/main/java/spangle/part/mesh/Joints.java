package spangle.part.mesh;

import java.util.HashMap;
import java.util.Map;

/** Gives corners at one place one number. */
final class Joints {
  private record Spot(long x, long y, long z) {}

  final int[][] of;
  final int count;

  /**
   * Numbers the corners.
   *
   * @param gridMm corners in one cell of this grid are one; 0 where they must be equal
   */
  Joints(Triangles triangles, double gridMm) {
    Map<Spot, Integer> numbers = new HashMap<>(triangles.count());
    of = new int[triangles.count()][3];
    for (int t = 0; t < of.length; t++) {
      for (int corner = 0; corner < 3; corner++) {
        Spot spot =
            new Spot(
                cell(triangles.at(t, corner, 0), gridMm),
                cell(triangles.at(t, corner, 1), gridMm),
                cell(triangles.at(t, corner, 2), gridMm));
        Integer known = numbers.putIfAbsent(spot, numbers.size());
        of[t][corner] = known == null ? numbers.size() - 1 : known;
      }
    }
    count = numbers.size();
  }

  private static long cell(double value, double grid) {
    // Adding zero makes minus zero and zero the same place.
    return grid > 0 ? Math.round(value / grid) : Double.doubleToLongBits(value + 0.0);
  }

  boolean flat(int triangle) {
    int[] corners = of[triangle];
    return corners[0] == corners[1] || corners[1] == corners[2] || corners[2] == corners[0];
  }
}
