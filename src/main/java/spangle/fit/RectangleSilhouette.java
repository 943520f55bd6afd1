package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import spangle.measure.Interval;

/**
 * The side view of a box: length l and height h. At the angle a it needs l cos a + h sin a along
 * and l sin a + h cos a down. With R the diagonal and p its own angle these are R cos(a - p) and R
 * sin(a + p), so that the angles that go in are known in closed form.
 *
 * @param lMm the side whose angle above level is meant, above zero
 * @param hMm the other side, above zero
 */
record RectangleSilhouette(double lMm, double hMm) implements Silhouette {
  private static final Interval ALL = new Interval(0, 90);

  @Override
  public double alongMm(double tiltDeg) {
    return lMm * Angles.cos(tiltDeg) + hMm * Angles.sin(tiltDeg);
  }

  @Override
  public double uprightMm(double tiltDeg) {
    return lMm * Angles.sin(tiltDeg) + hMm * Angles.cos(tiltDeg);
  }

  @Override
  public List<Interval> windowsDeg(double lengthMm, double depthMm) {
    return Angles.intersect(
            byLength(lengthMm + Angles.SLACK_MM), byDepth(depthMm + Angles.SLACK_MM))
        .stream()
        .map(Angles::snapped)
        .toList();
  }

  /** The angles at which it is covered to a depth, however long the tank. */
  List<Interval> depthWindowsDeg(double depthMm) {
    return byDepth(depthMm + Angles.SLACK_MM);
  }

  private List<Interval> byLength(double lengthMm) {
    double diagonal = Math.hypot(lMm, hMm);
    if (diagonal <= lengthMm) {
      return List.of(ALL);
    }
    double own = Math.toDegrees(Math.atan2(hMm, lMm));
    double away = Math.toDegrees(Math.acos(lengthMm / diagonal));
    return outside(own - away, own + away);
  }

  private List<Interval> byDepth(double depthMm) {
    double diagonal = Math.hypot(lMm, hMm);
    if (diagonal <= depthMm) {
      return List.of(ALL);
    }
    double own = Math.toDegrees(Math.atan2(hMm, lMm));
    double rise = Math.toDegrees(Math.asin(depthMm / diagonal));
    return outside(rise - own, 180 - rise - own);
  }

  /** All angles of 0 to 90 up to one limit and from another. */
  private static List<Interval> outside(double upTo, double from) {
    List<Interval> ranges = new ArrayList<>();
    if (upTo >= 0) {
      ranges.add(new Interval(0, Math.min(90, upTo)));
    }
    if (from <= 90) {
      ranges.add(new Interval(Math.max(0, from), 90));
    }
    return ranges;
  }

  @Override
  public List<Corner> corners() {
    return List.of(new Corner(0, 0), new Corner(lMm, 0), new Corner(lMm, hMm), new Corner(0, hMm));
  }
}
