package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.List;
import spangle.part.flat.Arc;
import spangle.part.flat.Curve;
import spangle.part.flat.Point;

/** Points with the bulge of the way to the next one. */
final class Polyline {
  private final List<Point> points = new ArrayList<>();
  private final List<Double> bulges = new ArrayList<>();

  void add(Point point, double bulge) {
    points.add(point);
    bulges.add(bulge);
  }

  int points() {
    return points.size();
  }

  /** Length of the way from point to point. */
  double size() {
    double size = 0;
    for (int i = 1; i < points.size(); i++) {
      size += points.get(i - 1).distance(points.get(i));
    }
    return size;
  }

  List<Curve> curves(boolean closed) {
    List<Curve> curves = new ArrayList<>();
    int last = closed ? points.size() : points.size() - 1;
    for (int i = 0; i < last; i++) {
      Point next = points.get((i + 1) % points.size());
      if (points.get(i).distance(next) > 0) {
        curves.add(Arc.bulge(points.get(i), next, bulges.get(i)));
      }
    }
    if (curves.isEmpty() && !points.isEmpty()) {
      curves.add(Arc.bulge(points.get(0), points.get(0), 0));
    }
    return curves;
  }
}
