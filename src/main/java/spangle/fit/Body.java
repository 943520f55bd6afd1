package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import spangle.measure.Box;

/**
 * A part as fitting sees it: its outside box and the lays in which it may hang. A fit found for the
 * convex hull of a part holds for the part.
 *
 * @param box outside size
 * @param lays every choice of the side across
 * @param points corners of a convex body the part lies in, x, y, z; none where only the box is
 *     known
 */
public record Body(Box box, List<Lay> lays, List<Point> points) {
  /** Sides of the prism a round part is rolled as: its faces touch the round from outside. */
  private static final int ROUND_SIDES = 48;

  /** Copies the lists. */
  public Body {
    lays = List.copyOf(lays);
    points = List.copyOf(points);
  }

  /** A body of which only the box and its lays are known. */
  public Body(Box box, List<Lay> lays) {
    this(box, lays, List.of());
  }

  /**
   * A point of a part.
   *
   * @param xMm one way
   * @param yMm another
   * @param zMm and the third
   */
  public record Point(double xMm, double yMm, double zMm) {
    /** The coordinate on an axis: 0, 1 or 2. */
    double on(int axis) {
      return axis == 0 ? xMm : axis == 1 ? yMm : zMm;
    }
  }

  /** A part of which only the outside size is known: three lays, one for each side across. */
  public static Body of(Box box) {
    double a = box.shortestMm();
    double b = box.middleMm();
    double c = box.longestMm();
    return new Body(
        box,
        List.of(
            new Lay(a, new RectangleSilhouette(c, b)),
            new Lay(b, new RectangleSilhouette(c, a)),
            new Lay(c, new RectangleSilhouette(b, a))));
  }

  /**
   * A round part.
   *
   * @param diameterMm outside diameter
   * @param lengthMm along the axis
   */
  public static Body cylinder(double diameterMm, double lengthMm) {
    return new Body(
        new Box(lengthMm, diameterMm, diameterMm),
        List.of(
            new Lay(
                diameterMm,
                new RectangleSilhouette(
                    Math.max(lengthMm, diameterMm), Math.min(lengthMm, diameterMm))),
            new Lay(lengthMm, new DiscSilhouette(diameterMm))),
        round(diameterMm, lengthMm));
  }

  /** Whether it is round about one axis, the first side of its box. */
  boolean round() {
    return lays.stream().anyMatch(lay -> lay.side() instanceof DiscSilhouette);
  }

  private static List<Point> round(double diameterMm, double lengthMm) {
    double radius = diameterMm / 2 / Math.cos(Math.PI / ROUND_SIDES);
    List<Silhouette.Corner> ring = new ArrayList<>();
    for (int i = 0; i < ROUND_SIDES; i++) {
      double angle = 2 * Math.PI * i / ROUND_SIDES;
      ring.add(new Silhouette.Corner(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return drawn(ring, lengthMm);
  }

  /** An outline drawn out square to itself. */
  private static List<Point> drawn(List<Silhouette.Corner> outline, double acrossMm) {
    List<Point> points = new ArrayList<>();
    for (Silhouette.Corner corner : outline) {
      points.add(new Point(corner.xMm(), corner.yMm(), 0));
      points.add(new Point(corner.xMm(), corner.yMm(), acrossMm));
    }
    return points;
  }

  /**
   * A part of one outline all across: an angle, a frame, a folded profile, a bent sheet.
   *
   * @param outline points of the side view; their convex hull counts
   * @param acrossMm size square to the outline
   */
  public static Body prism(List<Silhouette.Corner> outline, double acrossMm) {
    HullSilhouette side = new HullSilhouette(outline);
    double length = side.lengthMm();
    double height = side.heightMm();
    return new Body(
        new Box(length, acrossMm, height),
        List.of(
            new Lay(acrossMm, side),
            new Lay(acrossMm, side.mirrored()),
            rectangle(height, length, acrossMm),
            rectangle(length, height, acrossMm)),
        drawn(side.corners(), acrossMm));
  }

  /**
   * A part of which points in space are known, for example the corners of a folded pattern.
   *
   * @param points x, y, z in mm; their convex hull counts
   */
  public static Body points(List<double[]> points) {
    List<Lay> lays = new ArrayList<>();
    double[] size = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      int of = axis;
      double low = points.stream().mapToDouble(p -> p[of]).min().orElse(0);
      double high = points.stream().mapToDouble(p -> p[of]).max().orElse(0);
      size[axis] = high - low;
    }
    for (int axis = 0; axis < 3; axis++) {
      int one = (axis + 1) % 3;
      int other = (axis + 2) % 3;
      // The longer side lies along, so that level and upright mean the same as for a box.
      int along = size[one] >= size[other] ? one : other;
      int upright = along == one ? other : one;
      HullSilhouette side =
          new HullSilhouette(
              points.stream().map(p -> new Silhouette.Corner(p[along], p[upright])).toList());
      lays.add(new Lay(size[axis], side));
      lays.add(new Lay(size[axis], side.mirrored()));
    }
    return new Body(
        new Box(size[0], size[1], size[2]),
        lays,
        points.stream().map(p -> new Point(p[0], p[1], p[2])).toList());
  }

  private static Lay rectangle(double acrossMm, double oneMm, double otherMm) {
    return new Lay(
        acrossMm, new RectangleSilhouette(Math.max(oneMm, otherMm), Math.min(oneMm, otherMm)));
  }
}
