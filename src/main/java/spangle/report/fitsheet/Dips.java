package spangle.report.fitsheet;

import java.util.List;
import spangle.fit.Silhouette.Corner;
import spangle.fit.TwoDips;

/** Marks which end or side of a two-dip part is which, and where the dips overlap. */
final class Dips {
  private Dips() {}

  static void marks(Pencil pencil, View view, TwoDips dips, Outline outline, int dip) {
    List<Corner> c = dips.outline().isPresent() ? round(dips, outline, dip) : outline.corners();
    double half = dips.overlapMm() / 2 / dips.meetingSideMm();
    double middleShare = 0.5 + (dip == 0 ? 1 : -1) * asideShare(dips);
    boolean endOut = dips.form() == TwoDips.Form.END_OUT;
    Corner near = c.get(0);
    Corner far = endOut ? c.get(1) : c.get(3);
    Corner near2 = endOut ? c.get(3) : c.get(1);
    Corner far2 = c.get(2);
    for (double share : new double[] {middleShare - half, middleShare + half}) {
      Corner a = between(near, far, share);
      Corner b = between(near2, far2, share);
      pencil.line(view.x(a.xMm()), view.y(a.yMm()), view.x(b.xMm()), view.y(b.yMm()), 1.2, "5 4");
    }
    Corner low = between(between(near, far, 0.12), between(near2, far2, 0.12), 0.5);
    Corner high = between(between(near, far, 0.88), between(near2, far2, 0.88), 0.5);
    Corner middle =
        between(between(near, far, middleShare), between(near2, far2, middleShare), 0.5);
    String first = endOut ? "A" : "1";
    String second = endOut ? "B" : "2";
    word(pencil, view, low, dip == 0 ? first : second, 25);
    word(pencil, view, high, dip == 0 ? second : first, 25);
    word(pencil, view, middle, "overlap " + KettleDrawing.mm(dips.overlapMm()), 19);
  }

  /**
   * How far from the middle of the part, towards the end that is up in the first dip, the surface
   * meets both times, as a share of its length. An outline that is not its own mirror stands on
   * another corner the second time, and then more of it is covered in one dip than in the other:
   * along the upper face the dips reach (depth + lowest point) / sin a, and the middle between the
   * two is half their difference away.
   */
  private static double asideShare(TwoDips dips) {
    if (dips.outline().isEmpty()) {
      return 0;
    }
    double first = Outline.turned(dips.side(), dips.hangDeg()).low();
    double second = Outline.swung(dips.side(), dips.hangDeg()).low();
    return (first - second) / 2 / Math.sin(Math.toRadians(dips.hangDeg())) / dips.lMm();
  }

  /** The box round a real outline, standing where it stands: the marks go by it. */
  private static List<Corner> round(TwoDips dips, Outline drawn, int dip) {
    Outline turned =
        dip == 0
            ? Outline.turned(dips.side(), dips.hangDeg())
            : Outline.swung(dips.side(), dips.hangDeg());
    double dx = drawn.left() - turned.left();
    double dy = drawn.low() - turned.low();
    return Outline.rectangle(dips.lMm(), dips.hMm(), dips.hangDeg()).corners().stream()
        .map(corner -> new Corner(corner.xMm() + dx, corner.yMm() + dy))
        .toList();
  }

  private static void word(Pencil pencil, View view, Corner at, String text, double size) {
    pencil.words(view.x(at.xMm()), view.y(at.yMm()) + size * 0.35, size, "middle", true, text);
  }

  private static Corner between(Corner a, Corner b, double share) {
    return new Corner(a.xMm() + (b.xMm() - a.xMm()) * share, a.yMm() + (b.yMm() - a.yMm()) * share);
  }
}
