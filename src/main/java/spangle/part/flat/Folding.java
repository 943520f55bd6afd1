package spangle.part.flat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import spangle.measure.Box;
import spangle.part.BendAllowance;
import spangle.part.Folded;

/**
 * Size after bending: the sheet is cut along its bend lines into faces, the largest stays where it
 * is, and the others turn about their bend lines one after the other. The flat length of a bend is
 * {@link BendAllowance#arcMm}.
 */
public final class Folding {
  private static final double CHORD_MM = 0.05;
  private static final double MOST_STEP_DEG = 30;
  private static final double SPLINTER_MM = 1e-6;
  private static final int MOST_BENDS = 60;
  private static final int MOST_FACES = 200;

  private final double thicknessMm;
  private final List<Bend> bends;
  private final List<Polygon> faces;
  private final Motion[] motions;
  private final Geometry[] flat;
  private final List<Folded.Corner> corners = new ArrayList<>();
  private final double[] low = {1e300, 1e300, 1e300};
  private final double[] high = {-1e300, -1e300, -1e300};

  private Folding(double thicknessMm, List<Bend> bends, List<Polygon> faces) {
    this.thicknessMm = thicknessMm;
    this.bends = bends;
    this.faces = faces;
    this.motions = new Motion[faces.size()];
    this.flat = faces.toArray(new Geometry[0]);
  }

  /**
   * The bent part: its outside size, along its longest bend line first, and points that hold it.
   *
   * @param outer outline of the flat sheet
   * @param bends every bend of the sheet
   * @return empty when the bend lines do not cut the sheet into faces that can turn
   * @throws spangle.part.ShapeException for an angle, radius or thickness no sheet has
   */
  public static Optional<Folded> of(Contour outer, List<Bend> bends, double thicknessMm) {
    if (bends.isEmpty() || bends.size() > MOST_BENDS) {
      return Optional.empty();
    }
    Bend longest =
        bends.stream().max(Comparator.comparingDouble(b -> b.line().lengthMm())).orElseThrow();
    Point along = longest.line().end().minus(longest.line().start());
    Affine level = Affine.turn(-Math.toDegrees(Math.atan2(along.y(), along.x())));
    List<Bend> turned = new ArrayList<>();
    for (Bend bend : bends) {
      BendLine line =
          new BendLine(
              level.point(bend.line().start()),
              level.point(bend.line().end()),
              bend.line().label());
      turned.add(new Bend(line, bend.angleDeg(), bend.up(), bend.insideRadiusMm()));
    }
    try {
      List<Polygon> faces = faces(outer.transformed(level), turned);
      if (faces.size() < 2 || faces.size() > MOST_FACES) {
        return Optional.empty();
      }
      return new Folding(thicknessMm, turned, faces).folded();
    } catch (TopologyException tangled) {
      return Optional.empty();
    }
  }

  private static List<Polygon> faces(Contour outer, List<Bend> bends) {
    Polygon sheet = Ring.of(outer, CHORD_MM).polygon();
    Geometry lines = sheet.getBoundary();
    for (Bend bend : bends) {
      lines = lines.union(stretched(bend.line()));
    }
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(lines);
    List<Polygon> faces = new ArrayList<>();
    for (Object face : polygonizer.getPolygons()) {
      Polygon polygon = (Polygon) face;
      if (polygon.getArea() > 1e-6 && sheet.contains(polygon.getInteriorPoint())) {
        faces.add(polygon);
      }
    }
    faces.sort(
        Comparator.comparingLong((Polygon f) -> -exact(f.getArea()))
            .thenComparingLong(f -> exact(f.getEnvelopeInternal().getMinX()))
            .thenComparingLong(f -> exact(f.getEnvelopeInternal().getMinY())));
    return faces;
  }

  /**
   * In thousandths, so that faces of one size count as such: their last digits hang on the corner a
   * ring happens to begin with, which is not the same in every run.
   */
  private static long exact(double value) {
    return Math.round(1000 * value);
  }

  /** A bend line drawn a little short of the edge still bends the whole flange. */
  private static LineString stretched(BendLine line) {
    double length = Math.max(line.lengthMm(), 1e-9);
    Point along = line.end().minus(line.start()).times(Math.max(1.0 / length, 0.03));
    Point from = line.start().minus(along);
    Point to = line.end().plus(along);
    return Ring.FACTORY.createLineString(
        new Coordinate[] {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())});
  }

  private Optional<Folded> folded() {
    Deque<Integer> ready = new ArrayDeque<>();
    motions[0] = Motion.REST;
    ready.add(0);
    boolean[] by = new boolean[faces.size()];
    int turned = 1;
    while (!ready.isEmpty()) {
      int from = ready.poll();
      by[from] = true;
      for (int to = 0; to < faces.size(); to++) {
        if (to == from || by[to]) {
          continue;
        }
        Optional<Bend> bend = between(from, to);
        if (bend.isEmpty()) {
          continue;
        }
        if (motions[to] != null) {
          // Two ways to the same face: it cannot be bent so without tearing.
          return Optional.empty();
        }
        turn(from, to, bend.get());
        turned++;
        ready.add(to);
      }
    }
    if (turned < faces.size()) {
      return Optional.empty();
    }
    for (int i = 0; i < faces.size(); i++) {
      reach(flat[i], motions[i]);
    }
    return Optional.of(
        new Folded(
            new Box(
                toNanometre(high[0] - low[0]),
                toNanometre(high[1] - low[1]),
                toNanometre(high[2] - low[2])),
            corners));
  }

  private Optional<Bend> between(int from, int to) {
    Geometry shared = shared(from, to);
    if (shared.getLength() < 1e-6) {
      return Optional.empty();
    }
    Coordinate middle = shared.getInteriorPoint().getCoordinate();
    Point at = new Point(middle.x, middle.y);
    return bends.stream().min(Comparator.comparingDouble(b -> offset(b.line(), at)));
  }

  private Geometry shared(int from, int to) {
    return faces.get(from).getBoundary().intersection(faces.get(to).getBoundary());
  }

  private static double offset(BendLine line, Point point) {
    Point along = line.end().minus(line.start());
    return Math.abs(along.cross(point.minus(line.start()))) / Math.max(along.length(), 1e-12)
        + 1e-3 * line.distance(point);
  }

  private void turn(int from, int to, Bend bend) {
    Point start = bend.line().start();
    Point along = bend.line().end().minus(start);
    Point unit = along.times(1 / Math.max(along.length(), 1e-12));
    Point away = new Point(-unit.y(), unit.x());
    Coordinate inside = faces.get(to).getInteriorPoint().getCoordinate();
    if (new Point(inside.x, inside.y).minus(start).dot(away) < 0) {
      away = away.times(-1);
    }
    double zone = BendAllowance.arcMm(bend.angleDeg(), bend.insideRadiusMm(), thicknessMm);
    double middle = bend.insideRadiusMm() + thicknessMm / 2;
    double angle = Math.toRadians(bend.angleDeg());
    int up = bend.up() ? 1 : -1;
    motions[to] = motions[from].after(Motion.bend(start, away, angle, up, zone, middle));
    Coordinate[] ends = shared(from, to).getCoordinates();
    Polygon strip = strip(ends, away.times(zone / 2));
    flat[from] = flat[from].difference(strip);
    flat[to] = flat[to].difference(strip);
    round(motions[from], bend, away, zone, ends);
    for (Coordinate on : ends) {
      Point tangent = new Point(on.x, on.y).plus(away.times(-zone / 2));
      outermost(motions[from], tangent, away, up * middle, middle + thicknessMm / 2, angle);
    }
  }

  /**
   * The bent zone in the flat sheet: half of it lies on each side of the bend line. It is longer
   * than the line by less than anyone cuts, so that rounding leaves no splinter of the zone.
   */
  private static Polygon strip(Coordinate[] ends, Point half) {
    Point first = new Point(ends[0].x, ends[0].y);
    Point last = new Point(ends[ends.length - 1].x, ends[ends.length - 1].y);
    Point along = last.minus(first);
    Point more = along.times(SPLINTER_MM / Math.max(along.length(), SPLINTER_MM));
    return Ring.FACTORY.createPolygon(
        new Coordinate[] {
          corner(first.minus(more).minus(half)),
          corner(last.plus(more).minus(half)),
          corner(last.plus(more).plus(half)),
          corner(first.minus(more).plus(half)),
          corner(first.minus(more).minus(half))
        });
  }

  private static Coordinate corner(Point point) {
    return new Coordinate(point.x(), point.y());
  }

  /**
   * The points of the outer arc that reach furthest along each axis: where its direction is square
   * to the axis, if the arc goes as far, else its ends.
   *
   * @param tangent where the arc begins, on the sheet
   * @param centre height of its centre over the middle of the sheet, below zero when bent down
   */
  private void outermost(
      Motion motion, Point tangent, Point away, double centre, double radius, double angle) {
    double up = Math.signum(centre);
    double[] o = motion.apply(tangent.x(), tangent.y(), centre);
    double[] u = motion.apply(tangent.x() + away.x(), tangent.y() + away.y(), centre);
    double[] v = motion.apply(tangent.x(), tangent.y(), centre + up);
    List<Double> turned = new ArrayList<>(List.of(0.0, angle));
    for (int i = 0; i < 3; i++) {
      double furthest = Math.atan2(u[i] - o[i], o[i] - v[i]);
      turned.add(furthest < 0 ? furthest + 2 * Math.PI : furthest);
      turned.add(furthest + Math.PI);
    }
    for (double at : turned) {
      if (at <= angle) {
        double[] point = new double[3];
        for (int i = 0; i < 3; i++) {
          point[i] = o[i] + radius * (Math.sin(at) * (u[i] - o[i]) - Math.cos(at) * (v[i] - o[i]));
        }
        with(point);
      }
    }
  }

  /**
   * Points around the outside of a bend: corners of tangents to its outer arc, at most a twelfth of
   * a turn apart, so that the hull holds the arc.
   */
  private void round(Motion motion, Bend bend, Point away, double zoneMm, Coordinate[] along) {
    double middle = bend.insideRadiusMm() + thicknessMm / 2;
    int steps = (int) Math.ceil(bend.angleDeg() / MOST_STEP_DEG);
    double step = Math.toRadians(bend.angleDeg()) / steps;
    double reach = (middle + thicknessMm / 2) / Math.cos(step / 2);
    int up = bend.up() ? 1 : -1;
    for (int i = 0; i < steps; i++) {
      double turned = (i + 0.5) * step;
      double out = -zoneMm / 2 + reach * Math.sin(turned);
      for (Coordinate on : along) {
        Point at = new Point(on.x, on.y).plus(away.times(out));
        corner(motion.apply(at.x(), at.y(), up * (middle - reach * Math.cos(turned))));
      }
    }
  }

  private void corner(double[] point) {
    corners.add(
        new Folded.Corner(toNanometre(point[0]), toNanometre(point[1]), toNanometre(point[2])));
  }

  /** The last digit of a sine may differ between two runs; a plan must come out the same. */
  private static double toNanometre(double mm) {
    return Math.rint(mm * 1e6) / 1e6;
  }

  /** A face without the bent zones along it; nothing is left of a flange shorter than its bend. */
  private void reach(Geometry face, Motion motion) {
    for (Coordinate outer : face.convexHull().getCoordinates()) {
      corner(motion.apply(outer.x, outer.y, thicknessMm / 2));
      corner(motion.apply(outer.x, outer.y, -thicknessMm / 2));
    }
    for (Coordinate corner : face.getCoordinates()) {
      with(motion.apply(corner.x, corner.y, thicknessMm / 2));
      with(motion.apply(corner.x, corner.y, -thicknessMm / 2));
    }
  }

  private void with(double[] point) {
    for (int i = 0; i < 3; i++) {
      low[i] = Math.min(low[i], point[i]);
      high[i] = Math.max(high[i], point[i]);
    }
  }
}
