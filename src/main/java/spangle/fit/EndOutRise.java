package spangle.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import spangle.measure.Interval;

/**
 * The angles at which the underside of an end-out part leaves the tank above its rim: (L - h sin a)
 * tan a >= climb. The left side rises and falls at most twice over the quarter turn (its slope has
 * the sign of L/h - s (2 - s^2) with s = sin a, and s (2 - s^2) rises to s^2 = 2/3 and then falls),
 * so on each of three pieces a halving finds the only crossing.
 */
final class EndOutRise {
  private static final double FLAT_DEG = 1e-7;
  private static final double CREST_SINE = Math.sqrt(2.0 / 3);
  private static final int HALVINGS = 80;

  private EndOutRise() {}

  static List<Interval> windowsDeg(double lengthMm, double hMm, double climbMm) {
    List<Double> ends = new ArrayList<>(List.of(FLAT_DEG, 90 - FLAT_DEG));
    double ratio = lengthMm / hMm;
    turn(ratio, 0, CREST_SINE).forEach(ends::add);
    turn(ratio, 1, CREST_SINE).forEach(ends::add);
    Collections.sort(ends);
    List<Interval> windows = new ArrayList<>();
    for (int i = 1; i < ends.size(); i++) {
      piece(ends.get(i - 1), ends.get(i), lengthMm, hMm, climbMm - Angles.SLACK_MM)
          .forEach(windows::add);
    }
    return Angles.joined(windows);
  }

  /** The angle between two sines at which the slope changes its sign, if there is one. */
  private static List<Double> turn(double ratio, double fromSine, double toSine) {
    double low = fromSine;
    double high = toSine;
    if ((slope(low) - ratio) * (slope(high) - ratio) >= 0) {
      return List.of();
    }
    boolean belowAtLow = slope(low) < ratio;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (slope(middle) < ratio == belowAtLow) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double deg = Math.toDegrees(Math.asin((low + high) / 2));
    return deg > FLAT_DEG && deg < 90 - FLAT_DEG ? List.of(deg) : List.of();
  }

  private static double slope(double sine) {
    return sine * (2 - sine * sine);
  }

  private static List<Interval> piece(
      double fromDeg, double toDeg, double lengthMm, double hMm, double climbMm) {
    boolean atFrom = rise(fromDeg, lengthMm, hMm) >= climbMm;
    boolean atTo = rise(toDeg, lengthMm, hMm) >= climbMm;
    if (atFrom == atTo) {
      return atFrom ? List.of(new Interval(fromDeg, toDeg)) : List.of();
    }
    double low = fromDeg;
    double high = toDeg;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (rise(middle, lengthMm, hMm) >= climbMm == atFrom) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return List.of(atFrom ? new Interval(fromDeg, low) : new Interval(high, toDeg));
  }

  private static double rise(double deg, double lengthMm, double hMm) {
    return (lengthMm - hMm * Angles.sin(deg)) * Angles.tan(deg);
  }
}
