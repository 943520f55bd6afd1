package spangle.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import spangle.measure.Interval;

/**
 * The convex hull of a side view, its level lay standing in the corner at 0, 0. Its width in any
 * direction is decided by two corners; between the angles at which an edge stands level or upright
 * they stay the same two, and the width is one cosine, solved in closed form.
 */
final class HullSilhouette implements Silhouette {
  private static final Interval ALL = new Interval(0, 90);

  private final List<Corner> corners;

  /**
   * @param points any points of the outline, not all on one line
   */
  HullSilhouette(List<Corner> points) {
    Coordinate[] hull =
        new ConvexHull(
                points.stream()
                    .map(p -> new Coordinate(p.xMm(), p.yMm()))
                    .toArray(Coordinate[]::new),
                new GeometryFactory())
            .getConvexHull()
            .getCoordinates();
    if (hull.length < 4) {
      throw new IllegalArgumentException("an outline needs three points that are not on one line");
    }
    double left = Double.POSITIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    for (Coordinate corner : hull) {
      left = Math.min(left, corner.x);
      low = Math.min(low, corner.y);
    }
    List<Corner> ring = new ArrayList<>();
    for (int i = hull.length - 1; i > 0; i--) {
      ring.add(new Corner(hull[i].x - left, hull[i].y - low));
    }
    corners = List.copyOf(ring);
  }

  /** The same outline seen from the other side. */
  HullSilhouette mirrored() {
    return new HullSilhouette(corners.stream().map(c -> new Corner(-c.xMm(), c.yMm())).toList());
  }

  @Override
  public List<Corner> corners() {
    return corners;
  }

  @Override
  public double alongMm(double tiltDeg) {
    return widthMm(Angles.cos(tiltDeg), -Angles.sin(tiltDeg));
  }

  @Override
  public double uprightMm(double tiltDeg) {
    return widthMm(Angles.sin(tiltDeg), Angles.cos(tiltDeg));
  }

  private double widthMm(double x, double y) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Corner corner : corners) {
      double reach = corner.xMm() * x + corner.yMm() * y;
      low = Math.min(low, reach);
      high = Math.max(high, reach);
    }
    return high - low;
  }

  @Override
  public List<Interval> windowsDeg(double lengthMm, double depthMm) {
    List<Double> turns = turnsDeg();
    List<Interval> ranges = new ArrayList<>();
    for (int i = 1; i < turns.size(); i++) {
      Interval piece = new Interval(turns.get(i - 1), turns.get(i));
      double middle = piece.middle();
      Corner along = span(Angles.cos(middle), -Angles.sin(middle));
      Corner upright = span(Angles.sin(middle), Angles.cos(middle));
      ranges.addAll(
          Angles.intersect(
              Angles.intersect(List.of(piece), below(along, lengthMm + Angles.SLACK_MM, 0)),
              below(upright, depthMm + Angles.SLACK_MM, 90)));
    }
    return Angles.joined(ranges).stream().map(Angles::snapped).toList();
  }

  /** Where the deciding corners change: an edge level or upright. */
  private List<Double> turnsDeg() {
    List<Double> turns = new ArrayList<>(List.of(0.0, 90.0));
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      double edge = Math.toDegrees(Math.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm()));
      double turn = ((-edge % 90) + 90) % 90;
      if (turn > 0 && turn < 90) {
        turns.add(turn);
      }
    }
    Collections.sort(turns);
    return turns;
  }

  /** From the corner reaching least in a direction to the one reaching most. */
  private Corner span(double x, double y) {
    Corner low = corners.get(0);
    Corner high = low;
    for (Corner corner : corners) {
      double reach = corner.xMm() * x + corner.yMm() * y;
      if (reach < low.xMm() * x + low.yMm() * y) {
        low = corner;
      }
      if (reach > high.xMm() * x + high.yMm() * y) {
        high = corner;
      }
    }
    return new Corner(high.xMm() - low.xMm(), high.yMm() - low.yMm());
  }

  /**
   * Angles a of 0 to 90 at which the span turned by a, seen against a direction, stays within a
   * limit: R cos(a + own - direction) <= limit.
   */
  private static List<Interval> below(Corner span, double limitMm, double directionDeg) {
    double reach = Math.hypot(span.xMm(), span.yMm());
    if (reach <= limitMm) {
      return List.of(ALL);
    }
    double peak = directionDeg - Math.toDegrees(Math.atan2(span.yMm(), span.xMm()));
    double away = Math.toDegrees(Math.acos(limitMm / reach));
    List<Interval> ranges = new ArrayList<>();
    for (int turn = -1; turn <= 1; turn++) {
      new Interval(peak + turn * 360 + away, peak + (turn + 1) * 360 - away)
          .intersect(ALL)
          .ifPresent(ranges::add);
    }
    return Angles.joined(ranges);
  }
}
