package spangle.report.fitsheet;

import spangle.measure.Figures;

/** What a part hangs from, and its angle, as lines. */
final class HangLines {
  private final Pencil pencil;
  private final double size;
  private final double beam;

  /**
   * @param size height of letters
   * @param beam how far down the beam is drawn
   */
  HangLines(Pencil pencil, double size, double beam) {
    this.pencil = pencil;
    this.size = size;
    this.beam = beam;
  }

  /** Beam, hook and two wires to the quarters of the part; answers where the hook hangs. */
  double slings(View view, Outline outline) {
    double span = outline.right() - outline.left();
    double one = outline.left() + span * 0.25;
    double other = outline.left() + span * 0.75;
    pencil.line(view.x(one), beam, view.x(one), view.y(outline.topOver(one)), 1.4, "");
    pencil.line(view.x(other), beam, view.x(other), view.y(outline.topOver(other)), 1.4, "");
    double middle = view.x(outline.left() + span / 2);
    pencil.box(view.x(one) - 8, beam - 5, view.x(other) - view.x(one) + 16, 10, "#000", 0, "");
    pencil.line(middle, beam - 5, middle, beam - 24, 2.4, "");
    pencil.circle(middle, beam - 29, 5, "#fff", 2.4);
    return middle;
  }

  /** The angle at the lowest corner; beside the part where that is drawn too small for an arc. */
  void angle(View view, Outline outline, double deg) {
    if (deg < 0.05 || deg > 89.95) {
      return;
    }
    double x = view.x(outline.lowest().xMm());
    double y = view.y(outline.lowest().yMm());
    double reach = Math.min(90, (view.x(outline.right()) - x) * 0.55);
    String words = Figures.upTo(deg, 1) + "\u00b0";
    if (reach < 24) {
      pencil.words(view.x(outline.right()) + 10, y, size, "start", true, words);
      return;
    }
    pencil.line(x, y, x + reach + 26, y, 1, "4 4");
    double radians = Math.toRadians(deg);
    pencil.path(
        "M"
            + Pencil.num(x + reach)
            + " "
            + Pencil.num(y)
            + "A"
            + Pencil.num(reach)
            + " "
            + Pencil.num(reach)
            + " 0 0 0 "
            + Pencil.num(x + reach * Math.cos(radians))
            + " "
            + Pencil.num(y - reach * Math.sin(radians)),
        1.4);
    pencil.words(x + reach + 8, y - 6, size, "start", true, words);
  }
}
