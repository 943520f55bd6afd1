package spangle.report.hangsheet;

import java.util.ArrayList;
import java.util.List;
import spangle.report.picture.HatchLines;
import spangle.report.picture.Mark;
import spangle.report.picture.Svg;

/**
 * Black ink on white: lines, boxes and words of one drawing. Styled in place, so that it looks the
 * same on any page and alone.
 */
final class Ink {
  private static final double BASELINE = 0.35;
  private static final double HATCH_STEP = 6;
  private static final double HATCH_STROKE = 0.7;

  private final StringBuilder out = new StringBuilder();

  /** A white box under a hatch; -1 for none. */
  void hatched(double x, double y, double width, double height, int hatch, double stroke) {
    box(x, y, width, height, "#fff", stroke);
    String path = hatch < 0 ? "" : HatchLines.path(hatch, x, y, width, height, HATCH_STEP);
    if (!path.isEmpty()) {
      boolean spots = HatchLines.drawn(hatch) == HatchLines.Drawn.SPOTS;
      Mark drawn = Mark.of("path").put("d", path);
      out.append(
          spots
              ? drawn.put("fill", "#000").empty()
              : drawn.put("fill", "none").ink(HATCH_STROKE).empty());
    }
  }

  /** A box filled with a colour. */
  void box(double x, double y, double width, double height, String fill, double stroke) {
    out.append(Mark.box(x, y, width, height).put("fill", fill).ink(stroke).empty());
  }

  /** A straight line. */
  void line(double x1, double y1, double x2, double y2, double stroke) {
    out.append(Mark.line(x1, y1, x2, y2).ink(stroke).empty());
  }

  /** Words from a left edge, middle of the letters at y. */
  void words(double x, double y, double size, String text) {
    out.append(written(x, y, size, "start").around(text));
  }

  /** Bold words from a left edge, middle of the letters at y. */
  void bold(double x, double y, double size, String text) {
    out.append(written(x, y, size, "start").put("font-weight", "bold").around(text));
  }

  /** Words that end at x. */
  void wordsUpTo(double x, double y, double size, String text) {
    out.append(written(x, y, size, "end").around(text));
  }

  /** Words around x with a white rim that breaks the line they stand on. */
  void wordsAround(double x, double y, double size, String text) {
    out.append(written(x, y, size, "middle").rim(size / 2).around(text));
  }

  /** Words from a left edge with a white rim, readable on a hatch. */
  void rimmedWords(double x, double y, double size, String text) {
    out.append(written(x, y, size, "start").rim(size / 3).around(text));
  }

  /** A letter around a point with a white rim; lies on its side when turned. */
  void letter(double x, double y, double size, boolean turned, String text) {
    out.append(
        written(x, y, size, "middle")
            .put("font-weight", "bold")
            .rim(size / 4)
            .maybe("transform", turned ? Svg.turned(90, x, y) : "")
            .around(text));
  }

  private static Mark written(double x, double y, double size, String anchor) {
    return Mark.text(x, y + BASELINE * size).at("font-size", size).put("text-anchor", anchor);
  }

  /** Everything so far. */
  String content() {
    return out.toString();
  }

  /** Words broken into lines of at most so many characters at spaces, "9 x A" kept together. */
  static List<String> wrap(String text, int most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String bound : text.replace(" x ", "\u00a0x\u00a0").split(" ", -1)) {
      String word = bound.replace('\u00a0', ' ');
      if (line.length() > 0 && line.length() + 1 + word.length() > most) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
