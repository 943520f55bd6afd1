package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.fit.Silhouette.Corner;
import spangle.measure.Interval;

/**
 * Sideways angles at which a convex body goes in at some tilt. No closed form is known for a free
 * outline, so the quarter turn is cut into stretches, each proven as a whole: while the body rolls
 * by d radians no distance between two of its points across or upright changes by more than d times
 * the diameter of its section. Where the middle of a stretch goes in with that much to spare all of
 * the stretch does; where it misses by more than that none of it does; between the two the stretch
 * is halved, and what is still undecided at {@link #FINEST_DEG} is left out. The answer errs on the
 * side of no.
 */
final class OutlineRoll {
  /** Half of the shortest stretch that is still looked at, in degrees. */
  static final double FINEST_DEG = 0.02;

  private static final double COARSEST_DEG = 2.5;

  private final List<Corner> section;
  private final List<Double> alongMm;
  private final double diameterMm;
  private final UsableSpace space;

  private OutlineRoll(List<Corner> section, List<Double> alongMm, UsableSpace space) {
    this.section = section;
    this.alongMm = alongMm;
    this.space = space;
    double most = 0;
    for (Corner one : section) {
      for (Corner other : section) {
        most = Math.max(most, Math.hypot(one.xMm() - other.xMm(), one.yMm() - other.yMm()));
      }
    }
    this.diameterMm = most;
  }

  /** One attitude for each stretch of rolls; none for a body of which only the box is known. */
  static List<Attitude> find(List<Body.Point> points, UsableSpace space) {
    List<Attitude> found = new ArrayList<>();
    if (points.isEmpty()) {
      return found;
    }
    for (int axis = 0; axis < 3; axis++) {
      int along = axis;
      int across = (axis + 1) % 3;
      int up = (axis + 2) % 3;
      List<Double> reach = points.stream().map(p -> p.on(along)).toList();
      for (int side : new int[] {1, -1}) {
        List<Corner> section =
            points.stream().map(p -> new Corner(side * p.on(across), p.on(up))).toList();
        found.addAll(new OutlineRoll(section, reach, space).attitudes());
      }
    }
    return found;
  }

  private List<Attitude> attitudes() {
    List<Interval> proven = new ArrayList<>();
    for (double from = 0; from < 90; from += 2 * COARSEST_DEG) {
      prove(from + COARSEST_DEG, COARSEST_DEG, proven);
    }
    List<Attitude> found = new ArrayList<>();
    for (Interval roll : Angles.joined(proven)) {
      at(roll).ifPresent(found::add);
    }
    return found;
  }

  private void prove(double middleDeg, double halfDeg, List<Interval> proven) {
    double changeMm = Math.toRadians(halfDeg) * diameterMm;
    if (goesIn(middleDeg, -changeMm)) {
      proven.add(new Interval(middleDeg - halfDeg, middleDeg + halfDeg));
    } else if (halfDeg > FINEST_DEG && goesIn(middleDeg, changeMm)) {
      prove(middleDeg - halfDeg / 2, halfDeg / 2, proven);
      prove(middleDeg + halfDeg / 2, halfDeg / 2, proven);
    }
  }

  /** Whether some tilt does in a space that much larger each way. */
  private boolean goesIn(double rollDeg, double moreMm) {
    double width = space.widthMm() + moreMm;
    double length = space.lengthMm() + moreMm;
    double depth = space.depthMm() + moreMm;
    if (Math.min(width, Math.min(length, depth)) <= 0 || acrossMm(rollDeg) > width) {
      return false;
    }
    HullSilhouette side = side(rollDeg);
    return !side.windowsDeg(length, depth).isEmpty()
        || !side.mirrored().windowsDeg(length, depth).isEmpty();
  }

  private Optional<Attitude> at(Interval roll) {
    double middle = roll.middle();
    HullSilhouette side = side(middle);
    List<Interval> windows = side.windowsDeg(space.lengthMm(), space.depthMm());
    if (windows.isEmpty()) {
      side = side.mirrored();
      windows = side.windowsDeg(space.lengthMm(), space.depthMm());
    }
    double across = acrossMm(middle);
    return windows.isEmpty() || across > space.widthMm() + Angles.SLACK_MM
        ? Optional.empty()
        : Optional.of(
            new Attitude(
                acrossMm(0),
                across,
                side,
                windows,
                Optional.of(roll),
                new HullSilhouette(section).corners()));
  }

  private double acrossMm(double rollDeg) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Corner corner : section) {
      double x = corner.turned(rollDeg).xMm();
      low = Math.min(low, x);
      high = Math.max(high, x);
    }
    return high - low;
  }

  private HullSilhouette side(double rollDeg) {
    List<Corner> seen = new ArrayList<>();
    for (int i = 0; i < section.size(); i++) {
      seen.add(new Corner(alongMm.get(i), section.get(i).turned(rollDeg).yMm()));
    }
    return new HullSilhouette(seen);
  }
}
