package spangle.part.flat;

/**
 * Moves, turns, mirrors and scales: x' = a x + c y + e, y' = b x + d y + f.
 *
 * @param a x into x
 * @param b x into y
 * @param c y into x
 * @param d y into y
 * @param e shift to the right
 * @param f shift up
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
  /** Leaves everything where it is. */
  public static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  /** A shift. */
  public static Affine shift(double x, double y) {
    return new Affine(1, 0, 0, 1, x, y);
  }

  /** Scales about the origin; below zero mirrors. */
  public static Affine scale(double x, double y) {
    return new Affine(x, 0, 0, y, 0, 0);
  }

  /** Turns counter-clockwise about the origin. */
  public static Affine turn(double degrees) {
    double angle = Math.toRadians(degrees);
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Affine(cos, sin, -sin, cos, 0, 0);
  }

  /** First this, then the other. */
  public Affine then(Affine next) {
    return new Affine(
        next.a * a + next.c * b,
        next.b * a + next.d * b,
        next.a * c + next.c * d,
        next.b * c + next.d * d,
        next.a * e + next.c * f + next.e,
        next.b * e + next.d * f + next.f);
  }

  /** Where a point goes. */
  public Point point(Point p) {
    return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  /** What becomes of a vector. */
  public Point vector(Point p) {
    return new Point(a * p.x() + c * p.y(), b * p.x() + d * p.y());
  }

  /** How many times an area grows; below zero when it is mirrored. */
  public double areaFactor() {
    return a * d - b * c;
  }
}
