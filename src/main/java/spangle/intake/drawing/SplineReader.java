package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.intake.drawing.RawEntity.BadNumber;
import spangle.part.ShapeException;
import spangle.part.flat.Bezier;
import spangle.part.flat.Curve;
import spangle.part.flat.Point;
import spangle.part.flat.Splines;

/** Splines by control points or, where these are missing, through their fit points. */
final class SplineReader {
  private static final int CLOSED = 1;

  /** Points taken over the seam of a closed curve; what is beyond changes it by under 1e-5. */
  private static final int OVER_THE_SEAM = 10;

  List<Curve> curves(RawEntity e) throws BadNumber {
    List<Point> control = e.points(10);
    List<Point> fit = e.points(11);
    int most = Math.max(control.size(), fit.size());
    if (most > DrawingLimits.SPLINE_POINTS) {
      throw new ShapeException(
          "number of spline points",
          most,
          "at most " + DrawingLimits.SPLINE_POINTS,
          "split the curve");
    }
    if (!control.isEmpty()) {
      return List.copyOf(Splines.byControl(e.whole(71, 3), e.numbers(40), control, e.numbers(41)));
    }
    boolean closed = (e.whole(70, 0) & CLOSED) != 0;
    return List.copyOf(closed ? closed(fit) : Splines.through(fit, tangent(e, 12), tangent(e, 13)));
  }

  private static Optional<Point> tangent(RawEntity e, int code) throws BadNumber {
    return e.tag(code).isPresent() ? Optional.of(e.point(code)) : Optional.empty();
  }

  private static List<Bezier> closed(List<Point> points) {
    List<Point> round = new ArrayList<>(points);
    if (round.size() > 1 && round.get(0).distance(round.get(round.size() - 1)) <= 1e-9) {
      round.remove(round.size() - 1);
    }
    int count = round.size();
    if (count < 3) {
      throw new ShapeException(
          "number of fit points", count, "three or more for a closed curve", "draw it again");
    }
    List<Point> wrapped = new ArrayList<>();
    for (int i = -OVER_THE_SEAM; i <= count + OVER_THE_SEAM; i++) {
      wrapped.add(round.get(Math.floorMod(i, count)));
    }
    List<Bezier> curves = Splines.through(wrapped, Optional.empty(), Optional.empty());
    if (curves.size() != wrapped.size() - 1) {
      throw new ShapeException(
          "fit points that lie on one another", count, "apart", "draw the curve again");
    }
    return curves.subList(OVER_THE_SEAM, OVER_THE_SEAM + count);
  }
}
