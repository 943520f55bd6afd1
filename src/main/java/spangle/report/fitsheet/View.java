package spangle.report.fitsheet;

import java.util.List;
import spangle.fit.Silhouette.Corner;

/**
 * From mm, up, to the drawing's units, down.
 *
 * @param leftUnits where 0 mm stands
 * @param floorUnits where 0 mm of height stands
 * @param scale units for a mm
 */
record View(double leftUnits, double floorUnits, double scale) {
  double x(double mm) {
    return leftUnits + mm * scale;
  }

  double y(double mm) {
    return floorUnits - mm * scale;
  }

  List<Corner> of(List<Corner> mm) {
    return mm.stream().map(c -> new Corner(x(c.xMm()), y(c.yMm()))).toList();
  }
}
