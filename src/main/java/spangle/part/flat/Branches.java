package spangle.part.flat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import spangle.part.flat.Chains.Edge;

/**
 * Where more than two lines meet at a joint, keeps those on the outer boundary of the faces they
 * enclose; lines with a face on both sides run across the sheet, lines with none dangle.
 */
final class Branches {
  final List<Edge> boundary = new ArrayList<>();
  final List<Edge> across = new ArrayList<>();
  final List<Defect> defects = new ArrayList<>();

  Branches(List<Edge> edges, Snap joints, Tolerances tolerances) {
    Map<Integer, Integer> degree = degrees(edges);
    int[] group = groups(edges, joints.count());
    Map<Integer, List<Edge>> tangled = new LinkedHashMap<>();
    for (Edge edge : edges) {
      if (degree.getOrDefault(edge.from, 0) > 2 || degree.getOrDefault(edge.to, 0) > 2) {
        tangled.computeIfAbsent(group[edge.from], k -> new ArrayList<>());
      }
    }
    for (Edge edge : edges) {
      List<Edge> heap = tangled.get(group[edge.from]);
      if (heap == null) {
        boundary.add(edge);
      } else {
        heap.add(edge);
      }
    }
    tangled.values().forEach(heap -> sort(heap, joints, tolerances));
  }

  private static Map<Integer, Integer> degrees(List<Edge> edges) {
    Map<Integer, Integer> degree = new HashMap<>();
    for (Edge edge : edges) {
      degree.merge(edge.from, 1, Integer::sum);
      degree.merge(edge.to, 1, Integer::sum);
    }
    return degree;
  }

  private static int[] groups(List<Edge> edges, int joints) {
    int[] group = new int[joints];
    for (int i = 0; i < joints; i++) {
      group[i] = i;
    }
    for (Edge edge : edges) {
      group[root(group, edge.from)] = root(group, edge.to);
    }
    for (int i = 0; i < joints; i++) {
      group[i] = root(group, i);
    }
    return group;
  }

  private static int root(int[] group, int joint) {
    int at = joint;
    while (group[at] != at) {
      group[at] = group[group[at]];
      at = group[at];
    }
    return at;
  }

  private void sort(List<Edge> heap, Snap joints, Tolerances tolerances) {
    Polygonizer polygonizer = new Polygonizer();
    for (Edge edge : heap) {
      LineString line = Ring.line(edge.curve, tolerances.chordMm());
      Coordinate[] corners = line.getCoordinates();
      corners[0] = coordinate(joints.point(edge.from));
      corners[corners.length - 1] = coordinate(joints.point(edge.to));
      polygonizer.add(Ring.FACTORY.createLineString(corners));
    }
    Collection<?> faces = polygonizer.getPolygons();
    List<Polygon> polygons = new ArrayList<>();
    faces.forEach(face -> polygons.add((Polygon) face));
    if (polygons.isEmpty()) {
      across.addAll(heap);
      return;
    }
    Geometry outline = UnaryUnionOp.union(polygons).getBoundary();
    double near = 2 * tolerances.joinMm() + 2 * tolerances.chordMm();
    List<Edge> inner = new ArrayList<>();
    for (Edge edge : heap) {
      Coordinate middle = coordinate(edge.curve.middle());
      boolean on = outline.distance(Ring.FACTORY.createPoint(middle)) <= near;
      (on ? boundary : inner).add(edge);
    }
    // Bent lines inside may still be a hole that a straight line runs into.
    for (Edge edge : inner) {
      (edge.curve instanceof Segment ? across : boundary).add(edge);
    }
    Edge first = heap.get(0);
    Map<Integer, Integer> degree = degrees(heap);
    int joint =
        degree.entrySet().stream()
            .filter(e -> e.getValue() > 2)
            .map(Map.Entry::getKey)
            .min(Integer::compare)
            .orElse(first.from);
    defects.add(new Defect(Defect.Kind.BRANCH, joints.point(joint), 0, first.label));
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.x(), point.y());
  }
}
