package spangle.report.picture;

import java.util.List;

/**
 * Hatches that stand for colours. Each comes in dark lines for light colours and in light lines for
 * dark ones. The definitions stand once on a page; drawings refer to them.
 */
public final class Hatch {
  /** Names of the hatches, in order; number 12 starts over. */
  public static final List<String> NAMES =
      List.of(
          "rising lines",
          "dots",
          "upright lines",
          "crossed lines",
          "level lines",
          "falling lines",
          "squares",
          "rings",
          "broad rising lines",
          "grid",
          "zigzag",
          "dashes");

  private static final List<String> MARKS =
      List.of(
          "<path d=\"M-2 2 2-2M-2 10 10-2M6 10 10 6\"/>",
          "<circle cx=\"2\" cy=\"2\" r=\"1.3\" class=\"k\"/><circle cx=\"6\" cy=\"6\" r=\"1.3\""
              + " class=\"k\"/>",
          "<path d=\"M2 0V8M6 0V8\"/>",
          "<path d=\"M0 0 8 8M8 0 0 8\"/>",
          "<path d=\"M0 2H8M0 6H8\"/>",
          "<path d=\"M-2 6 2 10M-2-2 10 10M6-2 10 2\"/>",
          "<path d=\"M0 0H4V4H0ZM4 4H8V8H4Z\" class=\"k\"/>",
          "<circle cx=\"4\" cy=\"4\" r=\"2.4\"/>",
          "<path d=\"M-2 2 2-2M-2 10 10-2M6 10 10 6\" class=\"b\"/>",
          "<path d=\"M0 4H8M4 0V8\"/>",
          "<path d=\"M0 6 2 2 4 6 6 2 8 6\"/>",
          "<path d=\"M1 2H5M4 6H8\"/>");

  private Hatch() {}

  /** The hidden drawing that defines all hatches. */
  public static String definitions() {
    StringBuilder out = new StringBuilder();
    out.append("<svg class=\"defs\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>");
    for (int i = 0; i < MARKS.size(); i++) {
      one(out, "h" + i + "d", "hd", MARKS.get(i), 8);
      one(out, "h" + i + "l", "hl", MARKS.get(i), 8);
    }
    one(out, "shut", "hs", "<path d=\"M-1 1 1-1M-1 6 6-1M4 6 6 4\"/>", 5);
    one(out, "setup", "hd", "<path d=\"M0 3H6\"/>", 6);
    return out.append("</defs></svg>").toString();
  }

  private static void one(StringBuilder out, String id, String kind, String mark, int size) {
    out.append("<pattern id=\"")
        .append(id)
        .append("\" width=\"")
        .append(size)
        .append("\" height=\"")
        .append(size)
        .append("\" patternUnits=\"userSpaceOnUse\"><g class=\"")
        .append(kind)
        .append("\">")
        .append(mark)
        .append("</g></pattern>");
  }

  /** The fill of a hatch over a colour of six hexadecimal digits. */
  public static String fill(int number, String rgb) {
    return "url(#h" + Math.floorMod(number, MARKS.size()) + (dark(rgb) ? "l" : "d") + ")";
  }

  /** The name of a hatch. */
  public static String name(int number) {
    return NAMES.get(Math.floorMod(number, NAMES.size()));
  }

  /** Relative luminance by the weights of ITU-R BT.709, below the middle. */
  static boolean dark(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    double light =
        0.2126 * ((value >> 16) & 255) + 0.7152 * ((value >> 8) & 255) + 0.0722 * (value & 255);
    return light < 115;
  }

  /** A patch of a colour with its hatch, as its own drawing. */
  public static String patch(int number, String rgb, String words) {
    return new Svg(64, 32, "patch", words)
        .filled(0, 0, 64, 32, "#" + rgb)
        .filled(0, 0, 64, 32, fill(number, rgb))
        .rect(1, 1, 62, 30, "frame")
        .done();
  }
}
