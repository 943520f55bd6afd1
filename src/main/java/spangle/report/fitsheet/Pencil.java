package spangle.report.fitsheet;

import java.util.List;
import spangle.fit.Silhouette.Corner;
import spangle.measure.Figures;
import spangle.report.picture.Svg;

/**
 * Black lines and words, styled in place so that a drawing looks the same alone and on any page.
 */
final class Pencil {
  private static final String FONT = "Arial, 'Liberation Sans', sans-serif";

  private final StringBuilder out = new StringBuilder();

  void line(double x1, double y1, double x2, double y2, double stroke, String dash) {
    out.append("<line x1=\"")
        .append(num(x1))
        .append("\" y1=\"")
        .append(num(y1))
        .append("\" x2=\"")
        .append(num(x2))
        .append("\" y2=\"")
        .append(num(y2))
        .append("\" stroke=\"#000\" stroke-width=\"")
        .append(num(stroke))
        .append('"')
        .append(dashed(dash))
        .append("/>");
  }

  void box(
      double x, double y, double width, double height, String fill, double stroke, String dash) {
    out.append("<rect x=\"")
        .append(num(x))
        .append("\" y=\"")
        .append(num(y))
        .append("\" width=\"")
        .append(num(Math.max(0, width)))
        .append("\" height=\"")
        .append(num(Math.max(0, height)))
        .append("\" fill=\"")
        .append(fill)
        .append("\" stroke=\"#000\" stroke-width=\"")
        .append(num(stroke))
        .append('"')
        .append(dashed(dash))
        .append("/>");
  }

  /** A closed outline; points are in the drawing's units. */
  void shape(List<Corner> points, String fill, double stroke, String dash) {
    out.append("<polygon points=\"");
    for (Corner point : points) {
      out.append(num(point.xMm())).append(',').append(num(point.yMm())).append(' ');
    }
    out.append("\" fill=\"")
        .append(fill)
        .append("\" stroke=\"#000\" stroke-width=\"")
        .append(num(stroke))
        .append("\" stroke-linejoin=\"round\"")
        .append(dashed(dash))
        .append("/>");
  }

  void path(String data, double stroke) {
    out.append("<path d=\"")
        .append(data)
        .append("\" fill=\"none\" stroke=\"#000\" stroke-width=\"")
        .append(num(stroke))
        .append("\"/>");
  }

  void circle(double x, double y, double radius, String fill, double stroke) {
    out.append("<circle cx=\"")
        .append(num(x))
        .append("\" cy=\"")
        .append(num(y))
        .append("\" r=\"")
        .append(num(radius))
        .append("\" fill=\"")
        .append(fill)
        .append("\" stroke=\"#000\" stroke-width=\"")
        .append(num(stroke))
        .append("\"/>");
  }

  /** Words with a white rim, readable on any line. */
  void words(double x, double y, double size, String anchor, boolean bold, String text) {
    out.append("<text x=\"")
        .append(num(x))
        .append("\" y=\"")
        .append(num(y))
        .append("\" font-family=\"")
        .append(FONT)
        .append("\" font-size=\"")
        .append(num(size))
        .append("\" text-anchor=\"")
        .append(anchor)
        .append("\" stroke=\"#fff\" stroke-width=\"")
        .append(num(size / 2.5))
        .append("\" stroke-linejoin=\"round\" paint-order=\"stroke\" fill=\"#000\"")
        .append(bold ? " font-weight=\"bold\"" : "")
        .append('>')
        .append(Svg.escape(printable(text)))
        .append("</text>");
  }

  /** A line with a stroke at each end and words in its middle. */
  void measure(double x1, double y1, double x2, double y2, double size, String text) {
    line(x1, y1, x2, y2, 1, "");
    boolean level = Math.abs(y1 - y2) < 1e-9;
    double tick = 5;
    line(
        x1 - (level ? 0 : tick),
        y1 - (level ? tick : 0),
        x1 + (level ? 0 : tick),
        y1 + (level ? tick : 0),
        1.4,
        "");
    line(
        x2 - (level ? 0 : tick),
        y2 - (level ? tick : 0),
        x2 + (level ? 0 : tick),
        y2 + (level ? tick : 0),
        1.4,
        "");
    if (level) {
      words((x1 + x2) / 2, y1 + size * 0.35, size, "middle", false, text);
    } else {
      double x = x1;
      double y = (y1 + y2) / 2;
      out.append("<g transform=\"rotate(-90 ")
          .append(num(x))
          .append(' ')
          .append(num(y))
          .append(")\">");
      words(x, y + size * 0.35, size, "middle", false, text);
      out.append("</g>");
    }
  }

  private static String dashed(String dash) {
    return dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"";
  }

  /** Markup knows no control characters, not even escaped. */
  private static String printable(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> Character.isISOControl(c) || c == 0xFFFE || c == 0xFFFF ? ' ' : c)
        .filter(c -> c < 0xD800 || c > 0xDFFF)
        .forEach(clean::appendCodePoint);
    return clean.toString();
  }

  /** The whole element. */
  String svg(double width, double height, String label) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
        + num(width)
        + " "
        + num(height)
        + "\" role=\"img\" aria-label=\""
        + Svg.escape(printable(label))
        + "\"><rect width=\""
        + num(width)
        + "\" height=\""
        + num(height)
        + "\" fill=\"#fff\"/>"
        + out
        + "</svg>";
  }

  static String num(double value) {
    return Figures.upTo(value, 2);
  }
}
