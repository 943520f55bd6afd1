package spangle.part.flat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives points that lie within a tolerance of one another the same number. */
final class Snap {
  private final double tolerance;
  private final Map<Long, List<Integer>> cells = new HashMap<>();
  private final List<Point> points = new ArrayList<>();

  Snap(double tolerance) {
    this.tolerance = tolerance;
  }

  /** The number of a point; a new one when nothing known is near. */
  int number(Point point) {
    long column = cell(point.x());
    long row = cell(point.y());
    int best = -1;
    for (long c = column - 1; c <= column + 1; c++) {
      for (long r = row - 1; r <= row + 1; r++) {
        for (int known : cells.getOrDefault(key(c, r), List.of())) {
          double distance = points.get(known).distance(point);
          if (distance <= tolerance && (best < 0 || distance < points.get(best).distance(point))) {
            best = known;
          }
        }
      }
    }
    if (best >= 0) {
      return best;
    }
    points.add(point);
    cells.computeIfAbsent(key(column, row), k -> new ArrayList<>()).add(points.size() - 1);
    return points.size() - 1;
  }

  Point point(int number) {
    return points.get(number);
  }

  int count() {
    return points.size();
  }

  private long cell(double value) {
    return (long) Math.floor(value / tolerance);
  }

  private static long key(long column, long row) {
    return column * 0x9E3779B97F4A7C15L + row;
  }
}
