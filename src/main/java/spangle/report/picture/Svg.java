package spangle.report.picture;

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
    out.append(
        Mark.of("svg")
            .put("class", kind)
            .put("viewBox", "0 0 " + Mark.num(width) + " " + Mark.num(height))
            .put("role", "img")
            .put("aria-label", label)
            .open());
  }

  /** A box. */
  public Svg rect(double x, double y, double width, double height, String kind) {
    out.append(Mark.box(x, y, width, height).put("class", kind).empty());
    return this;
  }

  /** A box filled with a colour ("#336699") or a pattern ("url(#h3)"). */
  public Svg filled(double x, double y, double width, double height, String fill) {
    out.append(Mark.box(x, y, width, height).put("fill", fill).empty());
    return this;
  }

  /** A straight line. */
  public Svg line(double x1, double y1, double x2, double y2, String kind) {
    out.append(Mark.line(x1, y1, x2, y2).put("class", kind).empty());
    return this;
  }

  /** A path; the data are the caller's own figures, never text from outside. */
  public Svg path(String data, String kind) {
    out.append(Mark.of("path").put("d", data).put("class", kind).empty());
    return this;
  }

  /** Text at a baseline. */
  public Svg text(double x, double y, String kind, String words) {
    out.append(Mark.text(x, y).put("class", kind).around(words));
    return this;
  }

  /** Text of a size in the drawing's own units. */
  public Svg text(double x, double y, double size, String kind, String words) {
    out.append(Mark.text(x, y).at("font-size", size).put("class", kind).around(words));
    return this;
  }

  /** Opens a group that links to a place on the same page and says what it is when pointed at. */
  public Svg link(String place, String title) {
    out.append(Mark.of("a").put("href", "#" + place).open());
    out.append(Mark.of("title").around(title));
    return this;
  }

  /** Closes a link. */
  public Svg unlink() {
    out.append("</a>");
    return this;
  }

  /** The transformation that turns by so many degrees about a point. */
  public static String turned(double degrees, double x, double y) {
    return "rotate(" + Mark.num(degrees) + " " + Mark.num(x) + " " + Mark.num(y) + ")";
  }

  /** The element. */
  public String done() {
    return out + "</svg>";
  }

  /** Text made safe for markup, which knows no control characters, not even escaped. */
  public static String escape(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 8);
    text.codePoints()
        .filter(c -> c < 0xD800 || c > 0xDFFF)
        .map(c -> Character.isISOControl(c) || c == 0xFFFE || c == 0xFFFF ? ' ' : c)
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(c);
              }
            });
    return safe.toString();
  }
}
