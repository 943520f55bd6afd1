package spangle.report.hangsheet;

import java.util.ArrayList;
import java.util.List;
import spangle.measure.Figures;
import spangle.report.picture.HatchLines;
import spangle.report.picture.Svg;

/**
 * Black ink on white: lines, boxes and words of one drawing. Styled in place, so that it looks the
 * same on any page and alone.
 */
final class Ink {
  private static final double BASELINE = 0.35;
  private static final double HATCH_STEP = 6;

  private final StringBuilder out = new StringBuilder();

  /** A white box under a hatch; -1 for none. */
  void hatched(double x, double y, double width, double height, int hatch, double stroke) {
    box(x, y, width, height, "#fff", stroke);
    String path = hatch < 0 ? "" : HatchLines.path(hatch, x, y, width, height, HATCH_STEP);
    if (!path.isEmpty()) {
      boolean spots = HatchLines.drawn(hatch) == HatchLines.Drawn.SPOTS;
      out.append("<path d=\"")
          .append(path)
          .append(
              spots
                  ? "\" fill=\"#000\"/>"
                  : "\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.7\"/>");
    }
  }

  /** A box filled with a colour. */
  void box(double x, double y, double width, double height, String fill, double stroke) {
    out.append("<rect x=\"")
        .append(num(x))
        .append("\" y=\"")
        .append(num(y))
        .append("\" width=\"")
        .append(num(width))
        .append("\" height=\"")
        .append(num(height))
        .append("\" fill=\"")
        .append(fill)
        .append("\" stroke=\"#000\" stroke-width=\"")
        .append(num(stroke))
        .append("\"/>");
  }

  /** A straight line. */
  void line(double x1, double y1, double x2, double y2, double stroke) {
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
        .append("\"/>");
  }

  /** Words from a left edge, middle of the letters at y. */
  void words(double x, double y, double size, String text) {
    write(x, y, size, "start", false, text, "");
  }

  /** Bold words from a left edge, middle of the letters at y. */
  void bold(double x, double y, double size, String text) {
    write(x, y, size, "start", true, text, "");
  }

  /** Words that end at x. */
  void wordsUpTo(double x, double y, double size, String text) {
    write(x, y, size, "end", false, text, "");
  }

  /** Words around x with a white rim that breaks the line they stand on. */
  void wordsAround(double x, double y, double size, String text) {
    write(x, y, size, "middle", false, text, rim(size / 2));
  }

  /** Words from a left edge with a white rim, readable on a hatch. */
  void rimmedWords(double x, double y, double size, String text) {
    String rim = rim(size / 3);
    write(x, y, size, "start", false, text, rim);
  }

  /** A letter around a point with a white rim; lies on its side when turned. */
  void letter(double x, double y, double size, boolean turned, String text) {
    String turn = turned ? " transform=\"rotate(90 " + num(x) + " " + num(y) + ")\"" : "";
    write(x, y, size, "middle", true, text, rim(size / 4) + turn);
  }

  private static String rim(double width) {
    return " stroke=\"#fff\" stroke-width=\""
        + num(width)
        + "\" stroke-linejoin=\"round\" paint-order=\"stroke\"";
  }

  private void write(
      double x, double y, double size, String anchor, boolean bold, String text, String more) {
    out.append("<text x=\"")
        .append(num(x))
        .append("\" y=\"")
        .append(num(y + BASELINE * size))
        .append("\" font-size=\"")
        .append(num(size))
        .append("\" text-anchor=\"")
        .append(anchor)
        .append('"');
    if (bold) {
      out.append(" font-weight=\"bold\"");
    }
    out.append(more).append('>').append(Svg.escape(printable(text))).append("</text>");
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

  /** Everything so far. */
  String content() {
    return out.toString();
  }

  static String num(double value) {
    return Figures.upTo(value, 2);
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
