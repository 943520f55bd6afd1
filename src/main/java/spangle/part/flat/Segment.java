package spangle.part.flat;

import java.util.List;

/** A straight line. */
public record Segment(Point start, Point end) implements Curve {
  @Override
  public double sliverMm2() {
    return 0;
  }

  @Override
  public double lengthMm() {
    return start.distance(end);
  }

  @Override
  public Segment reversed() {
    return new Segment(end, start);
  }

  @Override
  public Segment transformed(Affine affine) {
    return new Segment(affine.point(start), affine.point(end));
  }

  @Override
  public Extent extent() {
    return Extent.of(start).with(end);
  }

  @Override
  public void flatten(double toleranceMm, List<Point> points) {
    points.add(end);
  }

  @Override
  public Point middle() {
    return start.middle(end);
  }
}
