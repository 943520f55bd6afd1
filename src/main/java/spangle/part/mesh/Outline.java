package spangle.part.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import spangle.part.Folded;

/** The corners of a body that its outlines along the three axes need, out of all it has. */
final class Outline {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** So many corners are looked at together; a large file has a million. */
  static final int AT_ONCE = 60_000;

  private Outline() {}

  /**
   * Corners that give the convex outlines seen along x, y and z exactly; seen from elsewhere the
   * body may reach further.
   */
  static List<Folded.Corner> of(Triangles triangles) {
    List<Folded.Corner> corners = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      for (Coordinate on : along(triangles, axis)) {
        double[] point = new double[3];
        point[(axis + 1) % 3] = on.x;
        point[(axis + 2) % 3] = on.y;
        point[axis] = on.getZ();
        corners.add(new Folded.Corner(point[0], point[1], point[2]));
      }
    }
    return List.copyOf(corners);
  }

  private static List<Coordinate> along(Triangles triangles, int axis) {
    List<Coordinate> seen = new ArrayList<>();
    for (int t = 0; t < triangles.count(); t++) {
      for (int corner = 0; corner < 3; corner++) {
        seen.add(
            new Coordinate(
                triangles.at(t, corner, (axis + 1) % 3),
                triangles.at(t, corner, (axis + 2) % 3),
                triangles.at(t, corner, axis)));
      }
      if (seen.size() > AT_ONCE) {
        seen = hull(seen);
      }
    }
    return hull(seen);
  }

  /** Corners of the convex hull in the plane, each once. */
  static List<Coordinate> hull(List<Coordinate> points) {
    Coordinate[] ring =
        new ConvexHull(points.toArray(new Coordinate[0]), FACTORY).getConvexHull().getCoordinates();
    // The ring ends where it begins.
    return new ArrayList<>(Arrays.asList(ring).subList(0, Math.max(1, ring.length - 1)));
  }
}
