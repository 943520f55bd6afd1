package spangle.report.fitsheet;

import java.util.List;
import spangle.fit.Silhouette.Corner;
import spangle.fit.vent.HolePlace;
import spangle.fit.vent.Task;

/** Marks vents and drains on a part as it hangs. */
final class Holes {
  private static final double INSET = 11;
  private static final double SAME_MM = 1e-3;

  private Holes() {}

  static void marks(Pencil pencil, View view, Outline outline, List<HolePlace> places) {
    if (!box(outline.corners())) {
      return;
    }
    for (HolePlace place : places) {
      Corner corner = outline.corners().get(index(place));
      Corner middle = Rolled.middle(outline);
      double x = view.x(corner.xMm());
      double y = view.y(corner.yMm());
      double dx = view.x(middle.xMm()) - x;
      double dy = view.y(middle.yMm()) - y;
      double far = Math.max(1, Math.hypot(dx, dy));
      double cx = x + dx / far * Math.min(INSET, far / 2);
      double cy = y + dy / far * Math.min(INSET, far / 2);
      pencil.circle(cx, cy, 4.5, "#fff", 2.2);
      boolean vent = place.task() == Task.VENT;
      pencil.words(cx, vent ? cy - 11 : cy + 25, 19, "middle", true, place.task().word());
    }
  }

  /** Only a box's corners have the names of places: of another outline others may stand lowest. */
  private static boolean box(List<Corner> c) {
    return c.size() == 4
        && Math.abs(c.get(0).xMm() + c.get(2).xMm() - c.get(1).xMm() - c.get(3).xMm()) < SAME_MM
        && Math.abs(c.get(0).yMm() + c.get(2).yMm() - c.get(1).yMm() - c.get(3).yMm()) < SAME_MM
        && Math.abs(diagonal(c, 0) - diagonal(c, 1)) < SAME_MM;
  }

  private static double diagonal(List<Corner> c, int from) {
    return Math.hypot(
        c.get(from + 2).xMm() - c.get(from).xMm(), c.get(from + 2).yMm() - c.get(from).yMm());
  }

  /** Corners stand near end under, far end under, far end top, near end top. */
  private static int index(HolePlace place) {
    if (place.topSide()) {
      return place.farEnd() ? 2 : 3;
    }
    return place.farEnd() ? 1 : 0;
  }
}
