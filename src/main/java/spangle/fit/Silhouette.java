package spangle.fit;

import java.util.List;
import spangle.measure.Interval;

/**
 * A part seen from the side, in the upright plane along the tank. Angles are those of its long axis
 * above level, 0 to 90 degrees; seen from the other side it is another silhouette.
 */
public interface Silhouette {
  /** Room it needs along the tank at an angle, in mm. */
  double alongMm(double tiltDeg);

  /** Room it needs from lowest to highest point at an angle, in mm. */
  double uprightMm(double tiltDeg);

  /**
   * All angles at which it goes into a length and a depth: separate closed ranges, rising.
   *
   * @param lengthMm usable length
   * @param depthMm usable depth
   */
  List<Interval> windowsDeg(double lengthMm, double depthMm);

  /** Corners of the convex outline in its level lay, counter-clockwise, in mm; for drawings. */
  List<Corner> corners();

  /** Length of the level outline in mm. */
  default double lengthMm() {
    return alongMm(0);
  }

  /** Height of the level outline in mm. */
  default double heightMm() {
    return uprightMm(0);
  }

  /**
   * A point of the outline.
   *
   * @param xMm along
   * @param yMm up
   */
  record Corner(double xMm, double yMm) {
    /** The point turned about the origin, counter-clockwise. */
    public Corner turned(double deg) {
      double cos = Angles.cos(deg);
      double sin = Angles.sin(deg);
      return new Corner(xMm * cos - yMm * sin, xMm * sin + yMm * cos);
    }
  }
}
