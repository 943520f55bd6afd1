package spangle.part.flat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Takes out contours that are drawn twice. */
final class Doubles {
  private final Tolerances tolerances;

  Doubles(Tolerances tolerances) {
    this.tolerances = tolerances;
  }

  /** The contours once each; those left out are noted. */
  List<Contour> removed(List<Contour> contours, List<Defect> defects) {
    Snap corners = new Snap(2 * tolerances.joinMm());
    Map<Long, List<Contour>> bySpot = new HashMap<>();
    List<Contour> single = new ArrayList<>();
    for (Contour contour : contours) {
      Extent extent = contour.extent();
      long low = corners.number(new Point(extent.minX(), extent.minY()));
      long high = corners.number(new Point(extent.maxX(), extent.maxY()));
      List<Contour> same = bySpot.computeIfAbsent(low << 32 | high, k -> new ArrayList<>(1));
      if (same.stream().anyMatch(c -> alike(c, contour))) {
        Point at = contour.curves().get(0).start();
        defects.add(new Defect(Defect.Kind.DOUBLED, at, contour.lengthMm(), contour.label()));
      } else {
        same.add(contour);
        single.add(contour);
      }
    }
    return single;
  }

  private boolean alike(Contour one, Contour other) {
    double length = Math.max(one.lengthMm(), other.lengthMm());
    double slack = 2 * tolerances.joinMm() * length;
    return Math.abs(one.areaMm2() - other.areaMm2()) <= slack
        && Math.abs(one.lengthMm() - other.lengthMm()) <= 1e-3 * length;
  }
}
