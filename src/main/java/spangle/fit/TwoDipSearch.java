package spangle.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spangle.measure.Box;
import spangle.measure.Interval;

/** Finds two dips for a part that does not go in whole. Turning over comes before end out. */
final class TwoDipSearch {
  /** Which sides of a box, from the shortest, lie across, along and upright. */
  static final int[][] LAYS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

  private TwoDipSearch() {}

  /** By the box; where that does not do, end out by the outline. */
  static Optional<TwoDips> find(Body body, UsableSpace space, double overlapMm) {
    return best(body.box(), space, overlapMm, TwoDipSearch::turnedOver)
        .or(() -> best(body.box(), space, overlapMm, TwoDipSearch::endOut))
        .or(() -> widest(OutlineDips.find(body, space, overlapMm)));
  }

  private interface Form {
    List<TwoDips> in(double w, double l, double h, UsableSpace space, double overlapMm);
  }

  private static Optional<TwoDips> best(Box box, UsableSpace space, double overlapMm, Form form) {
    double[] sides = {box.shortestMm(), box.middleMm(), box.longestMm()};
    List<TwoDips> found = new ArrayList<>();
    for (int[] lay : LAYS) {
      double across = sides[lay[0]];
      if (across <= space.widthMm() + Angles.SLACK_MM) {
        found.addAll(form.in(across, sides[lay[1]], sides[lay[2]], space, overlapMm));
      }
    }
    return widest(found);
  }

  private static Optional<TwoDips> widest(List<TwoDips> found) {
    return found.stream()
        .min(
            Comparator.comparingDouble(
                    (TwoDips way) -> -way.dipTiltDeg().map(Interval::width).orElse(0.0))
                .thenComparingDouble(way -> way.margin().worstShortageMm()));
  }

  private static List<TwoDips> turnedOver(
      double w, double l, double h, UsableSpace space, double overlapMm) {
    Margin margin =
        new Margin(
            space.lengthMm() - l, space.widthMm() - w, space.depthMm() - (h + overlapMm) / 2);
    return margin.worstShortageMm() <= Angles.SLACK_MM
        ? List.of(
            new TwoDips(
                TwoDips.Form.TURNED_OVER,
                w,
                l,
                h,
                overlapMm,
                Optional.empty(),
                margin,
                Optional.empty()))
        : List.of();
  }

  private static List<TwoDips> endOut(
      double w, double l, double h, UsableSpace space, double overlapMm) {
    double reach = (l + overlapMm) / 2;
    double climb = space.depthMm() + space.rimMm();
    List<Interval> covered = new RectangleSilhouette(reach, h).depthWindowsDeg(space.depthMm());
    List<TwoDips> found = new ArrayList<>();
    for (Interval angles :
        Angles.intersect(covered, EndOutRise.windowsDeg(space.lengthMm(), h, climb))) {
      double middle = angles.middle();
      Margin margin =
          new Margin(
              space.lengthMm() - (h * Angles.sin(middle) + climb / Angles.tan(middle)),
              space.widthMm() - w,
              space.depthMm() - (reach * Angles.sin(middle) + h * Angles.cos(middle)));
      found.add(
          new TwoDips(
              TwoDips.Form.END_OUT,
              w,
              l,
              h,
              overlapMm,
              Optional.of(angles),
              margin,
              Optional.empty()));
    }
    return found;
  }
}
