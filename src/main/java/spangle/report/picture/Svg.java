package spangle.report.picture;

import spangle.measure.Figures;

/** Writes one svg element; every text and attribute is escaped. */
public final class Svg {
  private final StringBuilder out = new StringBuilder();

  /**
   * Opens the drawing.
   *
   * @param width of the view box
   * @param height of the view box
   * @param kind its class on the page
   * @param label what it shows, for readers that cannot see it
   */
  public Svg(double width, double height, String kind, String label) {
    out.append("<svg class=\"")
        .append(escape(kind))
        .append("\" viewBox=\"0 0 ")
        .append(num(width))
        .append(' ')
        .append(num(height))
        .append("\" role=\"img\" aria-label=\"")
        .append(escape(label))
        .append("\">");
  }

  /** A box. */
  public Svg rect(double x, double y, double width, double height, String kind) {
    box(x, y, width, height);
    out.append(" class=\"").append(escape(kind)).append("\"/>");
    return this;
  }

  /** A box filled with a colour ("#336699") or a pattern ("url(#h3)"). */
  public Svg filled(double x, double y, double width, double height, String fill) {
    box(x, y, width, height);
    out.append(" fill=\"").append(escape(fill)).append("\"/>");
    return this;
  }

  private void box(double x, double y, double width, double height) {
    out.append("<rect x=\"")
        .append(num(x))
        .append("\" y=\"")
        .append(num(y))
        .append("\" width=\"")
        .append(num(Math.max(0, width)))
        .append("\" height=\"")
        .append(num(Math.max(0, height)))
        .append('"');
  }

  /** A straight line. */
  public Svg line(double x1, double y1, double x2, double y2, String kind) {
    out.append("<line x1=\"")
        .append(num(x1))
        .append("\" y1=\"")
        .append(num(y1))
        .append("\" x2=\"")
        .append(num(x2))
        .append("\" y2=\"")
        .append(num(y2))
        .append("\" class=\"")
        .append(escape(kind))
        .append("\"/>");
    return this;
  }

  /** A circle. */
  public Svg circle(double x, double y, double radius, String kind) {
    out.append("<circle cx=\"")
        .append(num(x))
        .append("\" cy=\"")
        .append(num(y))
        .append("\" r=\"")
        .append(num(radius))
        .append("\" class=\"")
        .append(escape(kind))
        .append("\"/>");
    return this;
  }

  /** A path; the data are the caller's own figures, never text from outside. */
  public Svg path(String data, String kind) {
    out.append("<path d=\"")
        .append(escape(data))
        .append("\" class=\"")
        .append(escape(kind))
        .append("\"/>");
    return this;
  }

  /** Text at a baseline. */
  public Svg text(double x, double y, String kind, String words) {
    out.append("<text x=\"")
        .append(num(x))
        .append("\" y=\"")
        .append(num(y))
        .append("\" class=\"")
        .append(escape(kind))
        .append("\">")
        .append(escape(words))
        .append("</text>");
    return this;
  }

  /** Text of a size in the drawing's own units. */
  public Svg text(double x, double y, double size, String kind, String words) {
    out.append("<text x=\"")
        .append(num(x))
        .append("\" y=\"")
        .append(num(y))
        .append("\" font-size=\"")
        .append(num(size))
        .append("\" class=\"")
        .append(escape(kind))
        .append("\">")
        .append(escape(words))
        .append("</text>");
    return this;
  }

  /** Opens a group that links to a place on the same page and says what it is when pointed at. */
  public Svg link(String place, String title) {
    out.append("<a href=\"#")
        .append(escape(place))
        .append("\"><title>")
        .append(escape(title))
        .append("</title>");
    return this;
  }

  /** Closes a link. */
  public Svg unlink() {
    out.append("</a>");
    return this;
  }

  /** Opens a turned group. */
  public Svg turn(double degrees, double x, double y) {
    out.append("<g transform=\"rotate(")
        .append(num(degrees))
        .append(' ')
        .append(num(x))
        .append(' ')
        .append(num(y))
        .append(")\">");
    return this;
  }

  /** Closes a group. */
  public Svg unturn() {
    out.append("</g>");
    return this;
  }

  /** The element. */
  public String done() {
    return out + "</svg>";
  }

  static String num(double value) {
    return Figures.upTo(value, 2);
  }

  /** Text made safe for markup. */
  public static String escape(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(c);
      }
    }
    return safe.toString();
  }
}
