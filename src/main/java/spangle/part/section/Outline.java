package spangle.part.section;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed outline of straight sides whose corners may be rounded. Area and perimeter are exact: a
 * rounded corner is a circular arc tangent to both sides.
 */
final class Outline {
  private record Corner(double x, double y, double radius) {}

  private final List<Corner> corners = new ArrayList<>();

  /** Adds a sharp corner, counter-clockwise. */
  Outline corner(double x, double y) {
    return corner(x, y, 0);
  }

  /** Adds a rounded corner, counter-clockwise; it may bulge out or in. */
  Outline corner(double x, double y, double radius) {
    corners.add(new Corner(x, y, radius));
    return this;
  }

  /** A rectangle with four corners of the same radius. */
  static Outline rectangle(double width, double height, double radius) {
    return new Outline()
        .corner(0, 0, radius)
        .corner(width, 0, radius)
        .corner(width, height, radius)
        .corner(0, height, radius);
  }

  double area() {
    double area = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      Corner b = next(i);
      area += (a.x * b.y - b.x * a.y) / 2;
      double turn = turn(i);
      // What the arc cuts off a convex corner it fills into a concave one.
      double sliver = a.radius * a.radius * (Math.tan(Math.abs(turn) / 2) - Math.abs(turn) / 2);
      area -= Math.signum(turn) * sliver;
    }
    return area;
  }

  double perimeter() {
    double perimeter = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      Corner b = next(i);
      double turn = Math.abs(turn(i));
      perimeter += Math.hypot(b.x - a.x, b.y - a.y) - a.radius * (2 * Math.tan(turn / 2) - turn);
    }
    return perimeter;
  }

  /** Angle by which the direction changes at corner {@code i}, above zero to the left. */
  private double turn(int i) {
    Corner before = corners.get((i + corners.size() - 1) % corners.size());
    Corner at = corners.get(i);
    Corner after = next(i);
    double inX = at.x - before.x;
    double inY = at.y - before.y;
    double outX = after.x - at.x;
    double outY = after.y - at.y;
    return Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY);
  }

  private Corner next(int i) {
    return corners.get((i + 1) % corners.size());
  }
}
