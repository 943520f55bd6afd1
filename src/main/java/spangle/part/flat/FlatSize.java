package spangle.part.flat;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Length and width of a flat part: as it is drawn, or turned where that gives a rectangle smaller
 * by more than two per cent.
 *
 * @param lengthMm the longer side
 * @param widthMm the shorter side
 * @param turnedDeg how far the rectangle is turned against the drawing
 */
public record FlatSize(double lengthMm, double widthMm, double turnedDeg) {
  private static final double CHORD_SHARE = 1e-4;
  private static final double WORTH_TURNING = 0.98;

  /** The size of one or more outlines together. */
  public static FlatSize of(List<Contour> outers) {
    Extent drawn = extent(outers, 0);
    double chord = Math.max(drawn.diagonal() * CHORD_SHARE, 1e-12);
    List<Point> points = new ArrayList<>();
    outers.forEach(o -> points.addAll(o.flattened(chord)));
    Coordinate[] corners = Ring.coordinates(points);
    Geometry smallest =
        MinimumAreaRectangle.getMinimumRectangle(Ring.FACTORY.createMultiPointFromCoords(corners));
    Coordinate[] rectangle = smallest.getCoordinates();
    if (rectangle.length == 5) {
      double angle =
          Math.toDegrees(
              Math.atan2(rectangle[1].y - rectangle[0].y, rectangle[1].x - rectangle[0].x));
      Extent turned = extent(outers, -angle);
      if (turned.width() * turned.height() < WORTH_TURNING * drawn.width() * drawn.height()) {
        return sorted(turned, angle);
      }
    }
    return sorted(drawn, 0);
  }

  private static FlatSize sorted(Extent extent, double angle) {
    return new FlatSize(
        Math.max(extent.width(), extent.height()),
        Math.min(extent.width(), extent.height()),
        angle);
  }

  private static Extent extent(List<Contour> outers, double degrees) {
    Affine turn = degrees == 0 ? Affine.IDENTITY : Affine.turn(degrees);
    return outers.stream()
        .map(o -> o.transformed(turn).extent())
        .reduce(Extent::with)
        .orElseThrow();
  }
}
