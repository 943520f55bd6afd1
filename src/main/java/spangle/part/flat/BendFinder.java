package spangle.part.flat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.part.flat.Chains.Chain;

/** Tells bend lines from help lines and from lines somebody forgot to close. */
final class BendFinder {
  /** How far from the boundary a bend line may stop, as a share of its length, and in mm. */
  private static final double SHORT_OF_EDGE = 0.02;

  private static final double SHORT_OF_EDGE_MM = 1;
  private static final int MOST_DISTANCES = 20_000;

  /** No sheet has more bends; beyond it lines are something else, a hatch perhaps. */
  private static final int MOST_BENDS = 500;

  private final List<Ring> outers;
  private final List<Ring> rings;
  private final Tolerances tolerances;
  private final List<BendLine> found = new ArrayList<>();
  private int distances;

  BendFinder(List<Ring> outers, List<Ring> rings, Tolerances tolerances) {
    this.outers = outers;
    this.rings = rings;
    this.tolerances = tolerances;
  }

  /** A stroke on a layer for bends, or drawn broken. */
  void tell(Stroke stroke, List<Curve> marks) {
    for (Curve curve : stroke.curves()) {
      boolean inside =
          curve instanceof Segment && found.size() < MOST_BENDS && inside(curve.middle());
      boolean bend = inside && (stroke.role() == Stroke.Role.BEND || acrossSheet(curve));
      if (bend) {
        found.add(new BendLine(curve.start(), curve.end(), stroke.label()));
      } else {
        marks.add(curve);
      }
    }
  }

  /** A chain on a layer for cuts that did not close. */
  void leftOver(Chain chain, List<Defect> defects, List<Curve> open) {
    Curve first = chain.curves().get(0);
    boolean straight =
        chain.curves().size() == 1 && first instanceof Segment && found.size() < MOST_BENDS;
    if (onBoundary(chain)) {
      defects.add(new Defect(Defect.Kind.DOUBLED, first.middle(), chain.lengthMm(), chain.label()));
    } else if (straight && inside(first.middle()) && acrossSheet(first)) {
      found.add(new BendLine(first.start(), first.end(), chain.label()));
      defects.add(
          new Defect(Defect.Kind.BEND_ON_CUT, first.middle(), first.lengthMm(), chain.label()));
    } else {
      defects.add(new Defect(Defect.Kind.OPEN, chain.start(), chain.gapMm(), chain.label()));
      open.addAll(chain.curves());
    }
  }

  private boolean inside(Point point) {
    return outers.stream().anyMatch(ring -> distances++ < MOST_DISTANCES && ring.holds(point));
  }

  private boolean acrossSheet(Curve line) {
    double reach =
        Math.max(tolerances.gapMm(), Math.min(SHORT_OF_EDGE_MM, SHORT_OF_EDGE * line.lengthMm()));
    return near(line.start(), reach) && near(line.end(), reach);
  }

  private boolean onBoundary(Chain chain) {
    for (Curve curve : chain.curves()) {
      double reach = tolerances.gapMm() / 2 + tolerances.chordMm();
      boolean on =
          near(curve.start(), reach) && near(curve.middle(), reach) && near(curve.end(), reach);
      if (!on) {
        return false;
      }
    }
    return true;
  }

  private boolean near(Point point, double reach) {
    for (Ring ring : rings) {
      var envelope = ring.envelope();
      boolean worth =
          point.x() >= envelope.getMinX() - reach
              && point.x() <= envelope.getMaxX() + reach
              && point.y() >= envelope.getMinY() - reach
              && point.y() <= envelope.getMaxY() + reach;
      if (worth && distances++ < MOST_DISTANCES && ring.distance(point) <= reach) {
        return true;
      }
    }
    return false;
  }

  /** Pieces on one straight line are one bend; the longest stretch over all of them. */
  List<BendLine> merged() {
    List<BendLine> merged = new ArrayList<>();
    List<BendLine> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingDouble(BendLine::lengthMm).reversed());
    for (BendLine line : sorted) {
      int with = -1;
      for (int i = 0; i < merged.size() && with < 0; i++) {
        if (merged.get(i).alignedWith(line, Math.max(0.05, 2 * tolerances.gapMm()))) {
          with = i;
        }
      }
      if (with < 0) {
        merged.add(line);
      } else {
        merged.set(with, over(merged.get(with), line));
      }
    }
    return merged;
  }

  private static BendLine over(BendLine one, BendLine other) {
    Point along = one.end().minus(one.start());
    double square = along.dot(along);
    double low = 0;
    double high = 1;
    for (Point point : List.of(other.start(), other.end())) {
      double share = point.minus(one.start()).dot(along) / square;
      low = Math.min(low, share);
      high = Math.max(high, share);
    }
    return new BendLine(
        one.start().plus(along.times(low)), one.start().plus(along.times(high)), one.label());
  }
}
