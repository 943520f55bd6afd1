package spangle.part.flat;

/**
 * A straight line about which the sheet is bent.
 *
 * @param start one end
 * @param end the other end
 * @param label which drawn line
 */
public record BendLine(Point start, Point end, String label) {
  /** Distance of a point from the line between the ends. */
  public double distance(Point point) {
    Point along = end.minus(start);
    double square = along.dot(along);
    double share = square == 0 ? 0 : point.minus(start).dot(along) / square;
    double on = Math.max(0, Math.min(1, share));
    return point.distance(start.plus(along.times(on)));
  }

  /** Length of the line, mm. */
  public double lengthMm() {
    return start.distance(end);
  }

  /** Whether another bend line lies on the same straight line. */
  boolean alignedWith(BendLine other, double toleranceMm) {
    Point along = end.minus(start);
    double length = along.length();
    if (length == 0) {
      return false;
    }
    return Math.abs(along.cross(other.start.minus(start))) / length <= toleranceMm
        && Math.abs(along.cross(other.end.minus(start))) / length <= toleranceMm;
  }
}
