package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Where a part that does not go in comes nearest to it: the attitude with the smallest worst
 * shortage.
 *
 * @param lay what lies across
 * @param tiltDeg the angle
 * @param margin usable less needed there; at least one is below zero
 */
public record Shortage(Lay lay, double tiltDeg, Margin margin) {
  private static final double SAME_MM = 1e-9;

  /** Finds it among all angles. */
  static Shortage of(Body body, UsableSpace space) {
    return least(body, space, side -> candidatesDeg(side, space));
  }

  /** Finds it among the straight lays. */
  static Shortage level(Body body, UsableSpace space) {
    return least(body, space, side -> List.of(0.0, 90.0));
  }

  private static Shortage least(
      Body body, UsableSpace space, Function<Silhouette, List<Double>> anglesDeg) {
    @Nullable Shortage best = null;
    for (Lay lay : body.lays()) {
      for (double tilt : anglesDeg.apply(lay.side())) {
        Shortage here =
            new Shortage(
                lay,
                tilt,
                new Margin(
                    space.lengthMm() - lay.side().alongMm(tilt),
                    space.widthMm() - lay.acrossMm(),
                    space.depthMm() - lay.side().uprightMm(tilt)));
        if (best == null
            || here.margin().worstShortageMm() < best.margin().worstShortageMm() - SAME_MM) {
          best = here;
        }
      }
    }
    if (best == null) {
      throw new IllegalArgumentException("a body has at least one lay");
    }
    return best;
  }

  /**
   * Both needs are pieces of falling-away cosines (concave), so the larger shortage is smallest at
   * an end of a piece or where the two are equal. Level and on end come first: they win a draw.
   */
  private static List<Double> candidatesDeg(Silhouette side, UsableSpace space) {
    List<Double> candidates = new ArrayList<>(List.of(0.0, 90.0));
    int steps = 720;
    double before = balance(side, space, 0);
    for (int i = 1; i <= steps; i++) {
      double to = 90.0 * i / steps;
      double here = balance(side, space, to);
      if (!(side instanceof RectangleSilhouette)) {
        candidates.add(to);
      }
      if (before * here < 0) {
        candidates.add(crossing(side, space, 90.0 * (i - 1) / steps, to));
      }
      before = here;
    }
    return candidates;
  }

  private static double crossing(Silhouette side, UsableSpace space, double fromDeg, double toDeg) {
    double low = fromDeg;
    double high = toDeg;
    double atLow = balance(side, space, low);
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      double here = balance(side, space, middle);
      if (here * atLow > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double balance(Silhouette side, UsableSpace space, double deg) {
    return (side.alongMm(deg) - space.lengthMm()) - (side.uprightMm(deg) - space.depthMm());
  }
}
