package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.fit.Silhouette.Corner;
import spangle.measure.Interval;

/**
 * End-out dips of a part by its convex outline, swung end for end between them; the derivation
 * stands in the project's page on fit. Looked at every {@link #STEP_DEG}; the ends of a range are
 * halved down and the angle it is hung at is checked by itself.
 */
final class OutlineDips {
  static final double STEP_DEG = 0.05;

  private static final int HALVINGS = 40;

  private final List<Corner> corners;
  private final List<Corner> swung;
  private final UsableSpace space;
  private final double overlapMm;

  private OutlineDips(Silhouette side, UsableSpace space, double overlapMm) {
    this.corners = side.corners();
    this.swung = side.corners().stream().map(c -> new Corner(-c.xMm(), c.yMm())).toList();
    this.space = space;
    this.overlapMm = overlapMm;
  }

  static List<TwoDips> find(Body body, UsableSpace space, double overlapMm) {
    List<TwoDips> found = new ArrayList<>();
    for (Lay lay : body.lays()) {
      if (lay.side() instanceof HullSilhouette side
          && lay.acrossMm() <= space.widthMm() + Angles.SLACK_MM) {
        OutlineDips dips = new OutlineDips(side, space, overlapMm);
        dips.ranges().forEach(range -> dips.at(range, lay, side).ifPresent(found::add));
      }
    }
    return found;
  }

  private List<Interval> ranges() {
    List<Interval> ranges = new ArrayList<>();
    int steps = (int) Math.round(90 / STEP_DEG);
    double from = -1;
    for (int i = 1; i < steps; i++) {
      double deg = i * STEP_DEG;
      boolean here = holds(deg);
      if (here && from < 0) {
        from = last(deg, deg - STEP_DEG);
      } else if (!here && from >= 0) {
        ranges.add(new Interval(from, last(deg - STEP_DEG, deg)));
        from = -1;
      }
    }
    return ranges;
  }

  /** The angle farthest from a good one towards a bad one that is still good. */
  private double last(double goodDeg, double badDeg) {
    double good = goodDeg;
    double bad = badDeg;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (good + bad) / 2;
      if (holds(middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }

  private boolean holds(double deg) {
    return deg > 0 && deg < 90 && spareDepthMm(deg) >= 0 && spareLengthMm(deg) >= 0;
  }

  private Optional<TwoDips> at(Interval range, Lay lay, Silhouette side) {
    double middle = range.middle();
    return holds(middle)
        ? Optional.of(
            new TwoDips(
                TwoDips.Form.END_OUT,
                lay.acrossMm(),
                side.lengthMm(),
                side.heightMm(),
                overlapMm,
                Optional.of(range),
                new Margin(
                    spareLengthMm(middle), space.widthMm() - lay.acrossMm(), spareDepthMm(middle)),
                Optional.of(side)))
        : Optional.empty();
  }

  /** What the zinc covers past the overlap at the upper face, as depth, halved over two dips. */
  private double spareDepthMm(double deg) {
    double top = corners.stream().mapToDouble(Corner::yMm).max().orElse(0);
    double upper = top * Angles.cos(deg);
    double both = 2 * space.depthMm() + lowest(corners, deg) + lowest(swung, deg) - 2 * upper;
    return (both - overlapMm * Angles.sin(deg)) / 2;
  }

  private static double lowest(List<Corner> points, double deg) {
    return points.stream().mapToDouble(c -> c.turned(deg).yMm()).min().orElse(0);
  }

  private double spareLengthMm(double deg) {
    double rim = space.depthMm() + space.rimMm();
    return space.lengthMm() - Math.max(reachBelow(corners, deg, rim), reachBelow(swung, deg, rim));
  }

  /** How far from its near end the outline reaches below a height over its lowest point. */
  private static double reachBelow(List<Corner> points, double deg, double heightMm) {
    List<Corner> turned = points.stream().map(c -> c.turned(deg)).toList();
    double left = turned.stream().mapToDouble(Corner::xMm).min().orElse(0);
    double limit = turned.stream().mapToDouble(Corner::yMm).min().orElse(0) + heightMm;
    double most = left;
    for (int i = 0; i < turned.size(); i++) {
      Corner one = turned.get(i);
      Corner other = turned.get((i + 1) % turned.size());
      if (one.yMm() <= limit) {
        most = Math.max(most, one.xMm());
      }
      if ((one.yMm() - limit) * (other.yMm() - limit) < 0) {
        double share = (limit - one.yMm()) / (other.yMm() - one.yMm());
        most = Math.max(most, one.xMm() + share * (other.xMm() - one.xMm()));
      }
    }
    return most - left;
  }
}
