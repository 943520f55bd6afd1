package spangle.part.flat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.valid.IsSimpleOp;
import spangle.part.ShapeException;

/** Finds which contour lies in which, and which cross. */
final class Nest {
  /** Pairs of contours looked at before the drawing is refused. */
  private static final int MOST_PAIRS = 400_000;

  private final List<Ring> rings;
  private final int[] depth;
  private final int[] parent;
  final List<Defect> defects = new ArrayList<>();

  Nest(List<Ring> unsorted) {
    rings = new ArrayList<>(unsorted);
    // Large first, then by place, so that the order of the file does not matter.
    rings.sort(
        Comparator.comparingDouble((Ring r) -> -r.area)
            .thenComparingDouble(r -> r.envelope().getMinX())
            .thenComparingDouble(r -> r.envelope().getMinY()));
    depth = new int[rings.size()];
    parent = new int[rings.size()];
    STRtree tree = new STRtree();
    for (int i = 0; i < rings.size(); i++) {
      crossesItself(rings.get(i));
      tree.insert(rings.get(i).envelope(), i);
    }
    refuseTooMany(tree);
    for (int i = 0; i < rings.size(); i++) {
      parent[i] = -1;
      for (Object other : tree.query(rings.get(i).envelope())) {
        place(i, (Integer) other);
      }
    }
    for (int i = 0; i < rings.size(); i++) {
      depth[i] = parent[i] < 0 ? 0 : depth[parent[i]] + 1;
    }
  }

  /** Counts before it compares, so that the refusal comes at once. */
  private void refuseTooMany(STRtree tree) {
    long pairs = 0;
    for (Ring ring : rings) {
      pairs += tree.query(ring.envelope()).size();
    }
    if (pairs > MOST_PAIRS) {
      throw new ShapeException(
          "number of contours lying in one another",
          pairs,
          "at most " + MOST_PAIRS,
          "leave out what is not cut, or give the figures by hand");
    }
  }

  /** Whether the larger ring holds ring {@code i}; the smallest that does is its parent. */
  private void place(int i, int larger) {
    if (larger >= i) {
      return;
    }
    Ring inner = rings.get(i);
    Ring outer = rings.get(larger);
    if (outer.meets(inner)) {
      crossing(outer, inner);
    }
    if (larger > parent[i] && outer.envelope().covers(inner.envelope()) && outer.holds(inner)) {
      parent[i] = larger;
    }
  }

  private void crossing(Ring one, Ring other) {
    Geometry meeting = one.line.intersection(other.line);
    if (meeting.getNumPoints() == 1 || meeting.isEmpty()) {
      // They only touch.
      return;
    }
    Coordinate at = meeting.getCoordinate();
    defects.add(new Defect(Defect.Kind.CROSSING, new Point(at.x, at.y), 0, other.contour.label()));
  }

  private void crossesItself(Ring ring) {
    IsSimpleOp simple = new IsSimpleOp(ring.line);
    if (!simple.isSimple()) {
      Coordinate at = simple.getNonSimpleLocation();
      defects.add(new Defect(Defect.Kind.CROSSING, new Point(at.x, at.y), 0, ring.contour.label()));
    }
  }

  List<Ring> atDepth(int from, int to) {
    List<Ring> found = new ArrayList<>();
    for (int i = 0; i < rings.size(); i++) {
      if (depth[i] >= from && depth[i] <= to) {
        found.add(rings.get(i));
      }
    }
    return found;
  }

  /** Sheet inside holes: every second depth counts, the ones between are taken off. */
  double islandsNetMm2() {
    double area = 0;
    for (int i = 0; i < rings.size(); i++) {
      if (depth[i] >= 2) {
        area += depth[i] % 2 == 0 ? rings.get(i).area : -rings.get(i).area;
      }
    }
    return area;
  }
}
