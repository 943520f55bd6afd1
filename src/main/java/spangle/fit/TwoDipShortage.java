package spangle.fit;

import spangle.measure.Box;

/**
 * Where two dips of a part come nearest to covering it, by its box: the form, lay and angle with
 * the smallest worst shortage. End out is looked at every {@link #STEP_DEG}.
 *
 * @param form turned over or end out
 * @param tiltDeg the angle; 0 when turned over
 * @param margin usable less needed; at least one is below zero where they do not cover it
 */
record TwoDipShortage(TwoDips.Form form, double tiltDeg, Margin margin) {
  static final double STEP_DEG = 0.05;

  static TwoDipShortage of(Box box, UsableSpace space, double overlapMm) {
    double[] sides = {box.shortestMm(), box.middleMm(), box.longestMm()};
    TwoDipShortage best = turnedOver(sides, TwoDipSearch.LAYS[0], space, overlapMm);
    for (int[] lay : TwoDipSearch.LAYS) {
      best = nearer(turnedOver(sides, lay, space, overlapMm), best);
    }
    int steps = (int) Math.round(90 / STEP_DEG);
    for (int[] lay : TwoDipSearch.LAYS) {
      for (int i = 1; i < steps; i++) {
        best = nearer(endOut(sides, lay, i * STEP_DEG, space, overlapMm), best);
      }
    }
    return best;
  }

  private static TwoDipShortage nearer(TwoDipShortage one, TwoDipShortage best) {
    return one.margin.worstShortageMm() < best.margin.worstShortageMm() - 1e-9 ? one : best;
  }

  private static TwoDipShortage turnedOver(
      double[] sides, int[] lay, UsableSpace space, double overlapMm) {
    return new TwoDipShortage(
        TwoDips.Form.TURNED_OVER,
        0,
        new Margin(
            space.lengthMm() - sides[lay[1]],
            space.widthMm() - sides[lay[0]],
            space.depthMm() - (sides[lay[2]] + overlapMm) / 2));
  }

  private static TwoDipShortage endOut(
      double[] sides, int[] lay, double deg, UsableSpace space, double overlapMm) {
    double l = sides[lay[1]];
    double h = sides[lay[2]];
    double depth = (l + overlapMm) / 2 * Angles.sin(deg) + h * Angles.cos(deg);
    // A deeper bath has a higher rim over its floor: the length is that beside the depth needed.
    double rim = Math.max(space.depthMm(), depth) + space.rimMm();
    return new TwoDipShortage(
        TwoDips.Form.END_OUT,
        deg,
        new Margin(
            space.lengthMm() - (h * Angles.sin(deg) + rim / Angles.tan(deg)),
            space.widthMm() - sides[lay[0]],
            space.depthMm() - depth));
  }
}
