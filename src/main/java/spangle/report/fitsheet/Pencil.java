package spangle.report.fitsheet;

import java.util.List;
import spangle.fit.Silhouette.Corner;
import spangle.report.picture.Mark;
import spangle.report.picture.Svg;

/**
 * Black lines and words, styled in place so that a drawing looks the same alone and on any page.
 */
final class Pencil {
  private static final String FONT = "Arial, 'Liberation Sans', sans-serif";

  private final StringBuilder out = new StringBuilder();

  void line(double x1, double y1, double x2, double y2, double stroke, String dash) {
    out.append(Mark.line(x1, y1, x2, y2).ink(stroke).maybe("stroke-dasharray", dash).empty());
  }

  void box(
      double x, double y, double width, double height, String fill, double stroke, String dash) {
    out.append(
        Mark.box(x, y, width, height)
            .put("fill", fill)
            .ink(stroke)
            .maybe("stroke-dasharray", dash)
            .empty());
  }

  /** A closed outline; points are in the drawing's units. */
  void shape(List<Corner> points, String fill, double stroke, String dash) {
    StringBuilder corners = new StringBuilder();
    for (Corner point : points) {
      corners.append(num(point.xMm())).append(',').append(num(point.yMm())).append(' ');
    }
    out.append(
        Mark.of("polygon")
            .put("points", corners.toString())
            .put("fill", fill)
            .ink(stroke)
            .put("stroke-linejoin", "round")
            .maybe("stroke-dasharray", dash)
            .empty());
  }

  void path(String data, double stroke) {
    out.append(Mark.of("path").put("d", data).put("fill", "none").ink(stroke).empty());
  }

  void circle(double x, double y, double radius, String fill, double stroke) {
    out.append(Mark.circle(x, y, radius).put("fill", fill).ink(stroke).empty());
  }

  /** Words with a white rim, readable on any line. */
  void words(double x, double y, double size, String anchor, boolean bold, String text) {
    words(x, y, size, anchor, bold, size / 2.5, text);
  }

  private void words(
      double x, double y, double size, String anchor, boolean bold, double rim, String text) {
    out.append(
        Mark.text(x, y)
            .put("font-family", FONT)
            .at("font-size", size)
            .put("text-anchor", anchor)
            .rim(rim)
            .put("fill", "#000")
            .maybe("font-weight", bold ? "bold" : "")
            .around(text));
  }

  /**
   * A line with a stroke at each end and words in its middle. The line stops at the words: between
   * two of them it would read as a minus.
   */
  void measure(double x1, double y1, double x2, double y2, double size, String text) {
    double rim = 0.9 * size;
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
      words((x1 + x2) / 2, y1 + size * 0.35, size, "middle", false, rim, text);
    } else {
      double x = x1;
      double y = (y1 + y2) / 2;
      out.append(Mark.of("g").put("transform", Svg.turned(-90, x, y)).open());
      words(x, y + size * 0.35, size, "middle", false, rim, text);
      out.append("</g>");
    }
  }

  /** The whole element. */
  String svg(double width, double height, String label) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
        + num(width)
        + " "
        + num(height)
        + "\" role=\"img\" aria-label=\""
        + Svg.escape(label)
        + "\"><rect width=\""
        + num(width)
        + "\" height=\""
        + num(height)
        + "\" fill=\"#fff\"/>"
        + out
        + "</svg>";
  }

  static String num(double value) {
    return Mark.num(value);
  }
}
