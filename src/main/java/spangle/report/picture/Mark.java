package spangle.report.picture;

import spangle.measure.Figures;

/** One element of a drawing while it is written; every text is made safe for markup. */
public final class Mark {
  private final String name;
  private final StringBuilder out;

  private Mark(String name) {
    this.name = name;
    this.out = new StringBuilder("<").append(name);
  }

  /** Begins an element. */
  public static Mark of(String name) {
    return new Mark(name);
  }

  /** A straight line between two points. */
  public static Mark line(double x1, double y1, double x2, double y2) {
    return of("line").at("x1", x1).at("y1", y1).at("x2", x2).at("y2", y2);
  }

  /** A box by its upper left corner; no side is below zero. */
  public static Mark box(double x, double y, double width, double height) {
    return of("rect")
        .at("x", x)
        .at("y", y)
        .at("width", Math.max(0, width))
        .at("height", Math.max(0, height));
  }

  /** A circle. */
  public static Mark circle(double x, double y, double radius) {
    return of("circle").at("cx", x).at("cy", y).at("r", radius);
  }

  /** Words at a point. */
  public static Mark text(double x, double y) {
    return of("text").at("x", x).at("y", y);
  }

  /** A figure, in the drawing's units. */
  public Mark at(String key, double value) {
    return put(key, num(value));
  }

  /** A text. */
  public Mark put(String key, String value) {
    out.append(' ').append(key).append("=\"").append(Svg.escape(value)).append('"');
    return this;
  }

  /** A text that may be missing: blank ones are left out. */
  public Mark maybe(String key, String value) {
    return value.isBlank() ? this : put(key, value);
  }

  /** A black stroke of a width. */
  public Mark ink(double width) {
    return put("stroke", "#000").at("stroke-width", width);
  }

  /** A white rim, so that words are readable on any line. */
  public Mark rim(double width) {
    return put("stroke", "#fff")
        .at("stroke-width", width)
        .put("stroke-linejoin", "round")
        .put("paint-order", "stroke");
  }

  /** The element without content. */
  public String empty() {
    return out + "/>";
  }

  /** The element around words. */
  public String around(String words) {
    return out + ">" + Svg.escape(words) + "</" + name + ">";
  }

  /** The element's beginning, for content that follows. */
  public String open() {
    return out + ">";
  }

  /** A figure with two digits. */
  public static String num(double value) {
    return Figures.upTo(value, 2);
  }
}
