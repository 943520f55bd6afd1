package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.measure.Box;
import spangle.measure.Interval;

/**
 * Finds the attitude in which a part goes in whole: by tilt, and by roll where tilt alone fails.
 */
final class WholeFit {
  private static final double SAME_DEG = 1e-9;
  private static final int HALVINGS = 80;

  private WholeFit() {}

  /** The attitude to report; empty when the part does not go in whole. */
  static Optional<Attitude> best(Body body, UsableSpace space, FitRules rules) {
    List<Attitude> found = tilted(body, space);
    List<Attitude> straight = found.stream().filter(Attitude::straight).toList();
    if (!straight.isEmpty()) {
      found = straight;
    }
    if (found.isEmpty()) {
      found = rolled(body.box(), space);
      found.addAll(OutlineRoll.find(body.points(), space));
    }
    return found.stream().reduce((one, other) -> better(one, other, rules));
  }

  private static List<Attitude> tilted(Body body, UsableSpace space) {
    List<Attitude> found = new ArrayList<>();
    for (Lay lay : body.lays()) {
      if (lay.acrossMm() <= space.widthMm() + Angles.SLACK_MM) {
        List<Interval> windows = lay.side().windowsDeg(space.lengthMm(), space.depthMm());
        if (!windows.isEmpty()) {
          found.add(Attitude.unrolled(lay.acrossMm(), lay.side(), windows));
        }
      }
    }
    return found;
  }

  private static List<Attitude> rolled(Box box, UsableSpace space) {
    double[] sides = {box.shortestMm(), box.middleMm(), box.longestMm()};
    List<Attitude> found = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      double length = sides[axis];
      double one = sides[(axis + 1) % 3];
      double other = sides[(axis + 2) % 3];
      double across = Math.min(one, other);
      double upright = Math.max(one, other);
      tallest(length, space)
          .ifPresent(
              tallestMm -> found.addAll(rolledAbout(length, across, upright, tallestMm, space)));
    }
    return found;
  }

  private static List<Attitude> rolledAbout(
      double lengthMm, double acrossMm, double uprightMm, double tallestMm, UsableSpace space) {
    List<Attitude> found = new ArrayList<>();
    RectangleSilhouette section = new RectangleSilhouette(acrossMm, uprightMm);
    for (Interval roll : section.windowsDeg(space.widthMm(), tallestMm)) {
      double middle = roll.middle();
      RectangleSilhouette side = new RectangleSilhouette(lengthMm, section.uprightMm(middle));
      List<Interval> windows = side.windowsDeg(space.lengthMm(), space.depthMm());
      if (!windows.isEmpty()) {
        found.add(
            new Attitude(
                acrossMm,
                section.alongMm(middle),
                side,
                windows,
                Optional.of(roll),
                section.corners()));
      }
    }
    return found;
  }

  /**
   * The greatest height that still goes in at some tilt beside a given length. Whatever goes in
   * goes in with less height too, so halving finds it.
   */
  private static Optional<Double> tallest(double lengthMm, UsableSpace space) {
    double fits = 1e-9;
    if (!goesIn(lengthMm, fits, space)) {
      return Optional.empty();
    }
    double fails = Math.max(space.lengthMm(), space.depthMm()) + 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (fits + fails) / 2;
      if (goesIn(lengthMm, middle, space)) {
        fits = middle;
      } else {
        fails = middle;
      }
    }
    return Optional.of(fits);
  }

  private static boolean goesIn(double lengthMm, double heightMm, UsableSpace space) {
    return !new RectangleSilhouette(lengthMm, heightMm)
        .windowsDeg(space.lengthMm(), space.depthMm())
        .isEmpty();
  }

  /** The widest stretch inside the drain limits, then the widest range, then the smallest side. */
  private static Attitude better(Attitude one, Attitude other, FitRules rules) {
    int order = compare(drainWidth(one, rules), drainWidth(other, rules));
    if (order == 0) {
      order = compare(one.widestDeg(), other.widestDeg());
    }
    if (order == 0) {
      order = Double.compare(other.acrossMm(), one.acrossMm());
    }
    return order >= 0 ? one : other;
  }

  private static double drainWidth(Attitude attitude, FitRules rules) {
    return attitude.widestWithin(rules.drainDeg()).map(Interval::width).orElse(-1.0);
  }

  private static int compare(double one, double other) {
    return Math.abs(one - other) <= SAME_DEG ? 0 : Double.compare(one, other);
  }
}
