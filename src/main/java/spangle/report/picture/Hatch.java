package spangle.report.picture;

import java.util.List;

/**
 * Hatches that stand for colours: dark strokes on light colours, light strokes on dark ones, so
 * that black and white loses nothing.
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

  private static final double STEP = 7;

  private Hatch() {}

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

  /** Fills a box of a drawing with a colour and its hatch. */
  static void fill(
      Svg svg, double x, double y, double width, double height, int number, String rgb) {
    svg.filled(x, y, width, height, "#" + rgb);
    String path = HatchLines.path(number, x, y, width, height, STEP);
    if (!path.isEmpty()) {
      String ink = dark(rgb) ? "hl" : "hd";
      String kind =
          switch (HatchLines.drawn(number)) {
            case LINES -> ink;
            case BROAD -> ink + " broad";
            case SPOTS -> ink + " spots";
          };
      svg.path(path, kind);
    }
  }

  /** A patch of a colour with its hatch, as its own drawing. */
  public static String patch(int number, String rgb, String words) {
    Svg svg = new Svg(64, 32, "patch", words);
    fill(svg, 0, 0, 64, 32, number, rgb);
    return svg.rect(1, 1, 62, 30, "frame").done();
  }
}
