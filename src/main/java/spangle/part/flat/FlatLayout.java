package spangle.part.flat;

import java.util.List;
import java.util.Optional;

/**
 * What the lines of a drawing come to.
 *
 * @param outers outlines that lie in nothing else
 * @param holes contours directly inside an outline
 * @param islands contours inside holes; even ones count as sheet
 * @param islandsNetMm2 sheet inside the holes, less the holes in it
 * @param bends bend lines; pieces on one straight line are one bend
 * @param open lines to be cut that do not close
 * @param marks lines that are not to be cut
 * @param defects what a person should look at, in a fixed order
 */
public record FlatLayout(
    List<Contour> outers,
    List<Contour> holes,
    List<Contour> islands,
    double islandsNetMm2,
    List<BendLine> bends,
    List<Curve> open,
    List<Curve> marks,
    List<Defect> defects) {
  /** Copies the lists. */
  public FlatLayout {
    outers = List.copyOf(outers);
    holes = List.copyOf(holes);
    islands = List.copyOf(islands);
    bends = List.copyOf(bends);
    open = List.copyOf(open);
    marks = List.copyOf(marks);
    defects = List.copyOf(defects);
  }

  /** Area inside the outlines less the holes, mm2. */
  public double netAreaMm2() {
    double area = islandsNetMm2;
    for (Contour outer : outers) {
      area += outer.areaMm2();
    }
    for (Contour hole : holes) {
      area -= hole.areaMm2();
    }
    return area;
  }

  /** Length of all contours, mm. */
  public double cutEdgeMm() {
    double length = 0;
    for (List<Contour> kind : List.of(outers, holes, islands)) {
      for (Contour contour : kind) {
        length += contour.lengthMm();
      }
    }
    return length;
  }

  /** How many closed contours there are. */
  public int contours() {
    return outers.size() + holes.size() + islands.size();
  }

  /** The upright rectangle around the outlines; empty without any. */
  public Optional<Extent> extent() {
    return outers.stream().map(Contour::extent).reduce(Extent::with);
  }

  /** Whether anything closed is there to be measured. */
  public boolean measurable() {
    return !outers.isEmpty() && netAreaMm2() > 0;
  }
}
