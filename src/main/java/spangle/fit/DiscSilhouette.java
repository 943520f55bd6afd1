package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import spangle.measure.Interval;

/**
 * A round part seen along its axis: as long as it is high, at every angle.
 *
 * @param diameterMm above zero
 */
record DiscSilhouette(double diameterMm) implements Silhouette {
  private static final int DRAWN_CORNERS = 48;

  @Override
  public double alongMm(double tiltDeg) {
    return diameterMm;
  }

  @Override
  public double uprightMm(double tiltDeg) {
    return diameterMm;
  }

  @Override
  public List<Interval> windowsDeg(double lengthMm, double depthMm) {
    return diameterMm <= Math.min(lengthMm, depthMm) + Angles.SLACK_MM
        ? List.of(new Interval(0, 90))
        : List.of();
  }

  @Override
  public List<Corner> corners() {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < DRAWN_CORNERS; i++) {
      double deg = 360.0 * i / DRAWN_CORNERS;
      double radius = diameterMm / 2;
      corners.add(
          new Corner(
              radius + radius * Math.cos(Math.toRadians(deg)),
              radius + radius * Math.sin(Math.toRadians(deg))));
    }
    return List.copyOf(corners);
  }
}
