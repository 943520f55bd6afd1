package spangle.part.flat;

/**
 * The upright rectangle around something.
 *
 * @param minX left
 * @param minY below
 * @param maxX right
 * @param maxY above
 */
public record Extent(double minX, double minY, double maxX, double maxY) {
  /** Coordinates beyond this are no drawing; squares of them still fit a double exactly enough. */
  static final double WORLD = 1e12;

  /** The extent of one point. */
  public static Extent of(Point point) {
    return new Extent(point.x(), point.y(), point.x(), point.y());
  }

  /** Around this and a point. */
  public Extent with(Point p) {
    return new Extent(
        Math.min(minX, p.x()), Math.min(minY, p.y()), Math.max(maxX, p.x()), Math.max(maxY, p.y()));
  }

  /** Around both. */
  public Extent with(Extent other) {
    return new Extent(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** From left to right. */
  public double width() {
    return maxX - minX;
  }

  /** From below to above. */
  public double height() {
    return maxY - minY;
  }

  /** From corner to corner. */
  public double diagonal() {
    return Math.hypot(width(), height());
  }
}
