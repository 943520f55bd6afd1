package spangle.part.flat;

/**
 * A point or a vector in the plane of the sheet.
 *
 * @param x to the right, mm
 * @param y up, mm
 */
public record Point(double x, double y) {
  /** This and another vector, one after the other. */
  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  /** The vector from another point to this one. */
  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  /** The vector so many times as long. */
  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  /** Signed area of the parallelogram spanned with another vector, above zero to its left. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  /** Scalar product. */
  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** Length of the vector. */
  public double length() {
    return Math.hypot(x, y);
  }

  /** Distance to another point. */
  public double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** Half way to another point. */
  public Point middle(Point other) {
    return new Point((x + other.x) / 2, (y + other.y) / 2);
  }

  /** Whether both numbers are numbers of this world. */
  public boolean finite() {
    return Math.abs(x) <= Extent.WORLD && Math.abs(y) <= Extent.WORLD;
  }
}
