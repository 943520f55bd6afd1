package spangle.part.flat;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** A contour as JTS sees it, for questions of topology only. */
final class Ring {
  static final GeometryFactory FACTORY = new GeometryFactory();

  final Contour contour;
  final LinearRing line;
  final double area;
  private final IndexedPointInAreaLocator locator;
  private final PreparedGeometry prepared;

  private Ring(Contour contour, LinearRing line) {
    this.contour = contour;
    this.line = line;
    this.area = contour.areaMm2();
    this.locator = new IndexedPointInAreaLocator(line);
    this.prepared = PreparedGeometryFactory.prepare(line);
  }

  /** Needs at least three corners. */
  static Ring of(Contour contour, double chordMm) {
    List<Point> points = contour.flattened(chordMm);
    while (points.size() < 4) {
      points.add(points.get(0));
    }
    return new Ring(contour, FACTORY.createLinearRing(coordinates(points)));
  }

  static Coordinate[] coordinates(List<Point> points) {
    return points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
  }

  static LineString line(Curve curve, double chordMm) {
    List<Point> points = new ArrayList<>();
    points.add(curve.start());
    curve.flatten(chordMm, points);
    return FACTORY.createLineString(coordinates(points));
  }

  Envelope envelope() {
    return line.getEnvelopeInternal();
  }

  boolean holds(Coordinate point) {
    return locator.locate(point) == Location.INTERIOR;
  }

  boolean holds(Point point) {
    return holds(new Coordinate(point.x(), point.y()));
  }

  /** Whether the other ring, whose line does not cross this one, lies inside. */
  boolean holds(Ring other) {
    int inside = 0;
    int outside = 0;
    Coordinate[] corners = other.line.getCoordinates();
    int step = Math.max(1, corners.length / 5);
    for (int i = 0; i < corners.length; i += step) {
      int where = locator.locate(corners[i]);
      inside += where == Location.INTERIOR ? 1 : 0;
      outside += where == Location.EXTERIOR ? 1 : 0;
    }
    return inside > outside;
  }

  boolean meets(Ring other) {
    return prepared.intersects(other.line);
  }

  Polygon polygon() {
    return FACTORY.createPolygon(line);
  }

  double distance(Point point) {
    return line.distance(FACTORY.createPoint(new Coordinate(point.x(), point.y())));
  }
}
