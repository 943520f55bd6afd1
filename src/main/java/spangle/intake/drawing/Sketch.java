package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.List;
import spangle.measure.Figures;
import spangle.part.flat.BendLine;
import spangle.part.flat.Contour;
import spangle.part.flat.Curve;
import spangle.part.flat.Defect;
import spangle.part.flat.Extent;
import spangle.part.flat.FlatLayout;
import spangle.part.flat.Point;

/**
 * Draws a flat pattern as it was understood: sheet grey, holes white, bend lines dash-dotted, what
 * was not counted dashed, doubtful places numbered. Told apart without colour.
 */
public final class Sketch {
  private static final double WIDE = 900;
  private static final double EDGE = 60;
  private static final int MOST_POINTS = 200_000;
  private static final int MOST_NUMBERS = 200;

  private final StringBuilder out = new StringBuilder(4096);
  private final Extent extent;
  private final double scale;
  private int points;

  private Sketch(Extent extent) {
    this.extent = extent;
    this.scale = WIDE / Math.max(Math.max(extent.width(), extent.height()), 1e-9);
  }

  /**
   * The picture as one SVG file.
   *
   * @param layout lines in mm
   * @param captions lines of text to stand below it
   */
  public static String svg(FlatLayout layout, List<String> captions) {
    Extent extent = extent(layout);
    return new Sketch(extent).draw(layout, captions);
  }

  private static Extent extent(FlatLayout layout) {
    List<Curve> curves = new ArrayList<>(layout.open());
    for (List<Contour> kind : List.of(layout.outers(), layout.holes(), layout.islands())) {
      kind.forEach(c -> curves.addAll(c.curves()));
    }
    if (curves.isEmpty()) {
      curves.addAll(layout.marks());
    }
    return curves.stream().map(Curve::extent).reduce(Extent::with).orElse(new Extent(0, 0, 1, 1));
  }

  private String draw(FlatLayout layout, List<String> captions) {
    List<String> lines = new ArrayList<>(captions);
    double tall = extent.height() * scale;
    double width = Math.max(extent.width() * scale, 500) + 2 * EDGE;
    double textAt = tall + 2 * EDGE;
    double height = textAt + 20 * (lines.size() + 2);
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
        .append(number(width))
        .append(' ')
        .append(number(height))
        .append("\" width=\"")
        .append(number(width))
        .append("\" height=\"")
        .append(number(height))
        .append("\" font-family=\"sans-serif\" font-size=\"14\">\n");
    out.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
    layout.outers().forEach(c -> contour(c, "#dddddd", 2.4));
    layout.holes().forEach(c -> contour(c, "#ffffff", 1.4));
    layout.islands().forEach(c -> contour(c, "#bbbbbb", 1.4));
    layout.marks().forEach(c -> curve(c, "#888888", 0.8, "1 3"));
    for (BendLine bend : layout.bends()) {
      path(List.of(bend.start(), bend.end()), false, "none", "#000000", 1.2, "14 4 2 4");
    }
    layout.open().forEach(c -> curve(c, "#000000", 3, "7 5"));
    int numbered = Math.min(layout.defects().size(), MOST_NUMBERS);
    for (int i = 0; i < numbered; i++) {
      number(layout.defects().get(i), i + 1);
    }
    legend(layout, lines, textAt);
    return out.append("</svg>\n").toString();
  }

  private void legend(FlatLayout layout, List<String> lines, double from) {
    double y = from;
    String size =
        Figures.upTo(extent.width(), 1) + " x " + Figures.upTo(extent.height(), 1) + " mm as drawn";
    text(
        EDGE,
        y,
        size + "; " + layout.contours() + " contours, " + layout.bends().size() + " bends");
    y += 20;
    text(EDGE, y, "grey: sheet; dash-dot: bend; thick dashes: not closed; dots: not cut");
    for (String line : lines) {
      y += 20;
      text(EDGE, y, line);
    }
  }

  private void contour(Contour contour, String fill, double width) {
    path(contour.flattened(chord()), true, fill, "#000000", width, "");
  }

  private void curve(Curve curve, String colour, double width, String dashes) {
    List<Point> line = new ArrayList<>();
    line.add(curve.start());
    curve.flatten(chord(), line);
    path(line, false, "none", colour, width, dashes);
  }

  private double chord() {
    return 0.1 / scale;
  }

  private void path(
      List<Point> line, boolean closed, String fill, String colour, double width, String dashes) {
    points += line.size();
    if (points > MOST_POINTS) {
      return;
    }
    out.append("<path d=\"");
    for (int i = 0; i < line.size(); i++) {
      out.append(i == 0 ? 'M' : 'L')
          .append(number(x(line.get(i))))
          .append(' ')
          .append(number(y(line.get(i))));
    }
    out.append(closed ? "Z" : "")
        .append("\" fill=\"")
        .append(fill)
        .append("\" stroke=\"")
        .append(colour)
        .append("\" stroke-width=\"")
        .append(number(width))
        .append(dashes.isEmpty() ? "" : "\" stroke-dasharray=\"" + dashes)
        .append("\"/>\n");
  }

  private void number(Defect defect, int number) {
    double x = x(defect.at());
    double y = y(defect.at());
    out.append("<circle cx=\"")
        .append(number(x))
        .append("\" cy=\"")
        .append(number(y))
        .append("\" r=\"12\" fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\"2\"/>\n");
    out.append("<text x=\"")
        .append(number(x))
        .append("\" y=\"")
        .append(number(y + 5))
        .append("\" text-anchor=\"middle\" font-weight=\"bold\">")
        .append(number)
        .append("</text>\n");
  }

  private void text(double x, double y, String words) {
    out.append("<text x=\"")
        .append(number(x))
        .append("\" y=\"")
        .append(number(y))
        .append("\">")
        .append(escaped(words))
        .append("</text>\n");
  }

  private static String escaped(String words) {
    StringBuilder text = new StringBuilder(words.length());
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      switch (c) {
        case '&' -> text.append("&amp;");
        case '<' -> text.append("&lt;");
        case '>' -> text.append("&gt;");
        default -> text.append(c < ' ' || Character.isSurrogate(c) || c > 0xFFFD ? ' ' : c);
      }
    }
    return text.toString();
  }

  private double x(Point point) {
    return EDGE + (point.x() - extent.minX()) * scale;
  }

  private double y(Point point) {
    return EDGE + (extent.maxY() - point.y()) * scale;
  }

  private static String number(double value) {
    return Figures.upTo(Math.max(-1e7, Math.min(1e7, value)), 2);
  }
}
