package spangle.part.mesh;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import spangle.part.Folded;

/**
 * A convex body of few corners that a mesh lies in. The corners of a plain body are taken as they
 * are. A finer one is cut square to its longest way into slices; each slice is held by the prism
 * over the outline of its own corners, and an outline of many corners by a polygon whose sides
 * touch it from outside. Every corner of the mesh lies in one of the prisms, so the mesh lies in
 * their hull, which is a little larger than its own.
 */
final class Around {
  /** So many different corners are kept as they are. */
  static final int PLAIN = 200;

  /** Slices of a finer mesh, each with two faces of at most {@link #SIDES} corners. */
  static final int SLICES = 8;

  /** Sides of the polygon around an outline of many corners: a round grows by 0.3 %. */
  static final int SIDES = 40;

  private final int along;
  private final List<List<Coordinate>> slices = new ArrayList<>();
  private final double[] low = new double[SLICES];
  private final double[] high = new double[SLICES];

  private Around(int along) {
    this.along = along;
    for (int i = 0; i < SLICES; i++) {
      slices.add(new ArrayList<>());
      low[i] = Double.POSITIVE_INFINITY;
      high[i] = Double.NEGATIVE_INFINITY;
    }
  }

  /** Corners whose convex hull holds all triangles; one at least. */
  static List<Folded.Corner> of(Triangles triangles) {
    Set<Folded.Corner> plain = new LinkedHashSet<>();
    for (int t = 0; t < triangles.count() && plain.size() <= PLAIN; t++) {
      for (int c = 0; c < 3; c++) {
        plain.add(
            new Folded.Corner(triangles.at(t, c, 0), triangles.at(t, c, 1), triangles.at(t, c, 2)));
      }
    }
    return plain.size() <= PLAIN ? List.copyOf(plain) : sliced(triangles);
  }

  private static List<Folded.Corner> sliced(Triangles triangles) {
    double[][] ends = new double[3][2];
    int longest = 0;
    for (int axis = 0; axis < 3; axis++) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int t = 0; t < triangles.count(); t++) {
        for (int c = 0; c < 3; c++) {
          least = Math.min(least, triangles.at(t, c, axis));
          most = Math.max(most, triangles.at(t, c, axis));
        }
      }
      ends[axis] = new double[] {least, most};
      longest = most - least > ends[longest][1] - ends[longest][0] ? axis : longest;
    }
    Around around = new Around(longest);
    double from = ends[longest][0];
    double length = ends[longest][1] - from;
    for (int t = 0; t < triangles.count(); t++) {
      for (int c = 0; c < 3; c++) {
        double share = (triangles.at(t, c, longest) - from) / length;
        around.put(triangles, t, c, Math.min(SLICES - 1, (int) (share * SLICES)));
      }
    }
    return around.corners();
  }

  private void put(Triangles triangles, int t, int c, int slice) {
    double at = triangles.at(t, c, along);
    low[slice] = Math.min(low[slice], at);
    high[slice] = Math.max(high[slice], at);
    List<Coordinate> seen = slices.get(slice);
    seen.add(
        new Coordinate(triangles.at(t, c, (along + 1) % 3), triangles.at(t, c, (along + 2) % 3)));
    if (seen.size() > Outline.AT_ONCE) {
      slices.set(slice, Outline.hull(seen));
    }
  }

  private List<Folded.Corner> corners() {
    Set<Folded.Corner> corners = new LinkedHashSet<>();
    for (int i = 0; i < SLICES; i++) {
      if (slices.get(i).isEmpty()) {
        continue;
      }
      List<Coordinate> outline = Outline.hull(slices.get(i));
      for (Coordinate on : outline.size() > SIDES ? polygon(outline) : outline) {
        corners.add(corner(on, low[i]));
        corners.add(corner(on, high[i]));
      }
    }
    return List.copyOf(corners);
  }

  private Folded.Corner corner(Coordinate on, double at) {
    double[] point = new double[3];
    point[along] = at;
    point[(along + 1) % 3] = on.x;
    point[(along + 2) % 3] = on.y;
    return new Folded.Corner(point[0], point[1], point[2]);
  }

  /** The polygon of equal angles whose sides touch an outline from outside. */
  private static List<Coordinate> polygon(List<Coordinate> outline) {
    double step = 2 * Math.PI / SIDES;
    double[] reach = new double[SIDES];
    for (int i = 0; i < SIDES; i++) {
      double cos = Math.cos(i * step);
      double sin = Math.sin(i * step);
      reach[i] = outline.stream().mapToDouble(p -> p.x * cos + p.y * sin).max().orElse(0);
    }
    List<Coordinate> corners = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      // Where the sides i and i + 1 meet: as far out as i reaches, and along it to the next.
      double out = reach[i];
      double on = (reach[(i + 1) % SIDES] - out * Math.cos(step)) / Math.sin(step);
      double cos = Math.cos(i * step);
      double sin = Math.sin(i * step);
      corners.add(new Coordinate(out * cos - on * sin, out * sin + on * cos));
    }
    return corners;
  }
}
