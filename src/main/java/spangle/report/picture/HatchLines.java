package spangle.report.picture;

import java.util.List;
import spangle.measure.Figures;

/**
 * The strokes of a hatch inside a box, as path data. Drawn out rather than as a repeated pattern:
 * printing a page with some thousand pattern fills takes a browser minutes.
 */
public final class HatchLines {
  /** How the path is drawn. */
  public enum Drawn {
    /** Stroked. */
    LINES,
    /** Stroked three times as wide. */
    BROAD,
    /** Filled. */
    SPOTS
  }

  private static final List<Drawn> DRAWN =
      List.of(
          Drawn.LINES,
          Drawn.SPOTS,
          Drawn.LINES,
          Drawn.LINES,
          Drawn.LINES,
          Drawn.LINES,
          Drawn.SPOTS,
          Drawn.LINES,
          Drawn.BROAD,
          Drawn.LINES,
          Drawn.LINES,
          Drawn.LINES);

  private final double left;
  private final double top;
  private final double width;
  private final double height;
  private final double step;
  private final StringBuilder path = new StringBuilder();

  private HatchLines(double left, double top, double width, double height, double step) {
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
    this.step = step;
  }

  /** How many hatches there are; higher numbers start over. */
  public static int kinds() {
    return DRAWN.size();
  }

  /** How a hatch's path is drawn. */
  public static Drawn drawn(int number) {
    return DRAWN.get(Math.floorMod(number, DRAWN.size()));
  }

  /**
   * Path data of a hatch.
   *
   * @param number of the hatch, as in {@link Hatch#NAMES}
   * @param step distance of its lines
   * @return empty where the box is too small for a mark
   */
  public static String path(
      int number, double left, double top, double width, double height, double step) {
    HatchLines lines = new HatchLines(left, top, width, height, step);
    switch (Math.floorMod(number, DRAWN.size())) {
      case 0 -> lines.rising(step * 1.3);
      case 1 -> lines.spots(false);
      case 2 -> lines.upright(step * 0.8);
      case 3 -> {
        lines.rising(step * 1.5);
        lines.falling(step * 1.5);
      }
      case 4 -> lines.level(step * 0.8);
      case 5 -> lines.falling(step * 1.3);
      case 6 -> lines.spots(true);
      case 7 -> lines.rings();
      case 8 -> lines.rising(step * 2.2);
      case 9 -> {
        lines.upright(step * 1.3);
        lines.level(step * 1.3);
      }
      case 10 -> lines.zigzag();
      default -> lines.dashes();
    }
    return lines.path.toString();
  }

  private void segment(double x1, double y1, double x2, double y2) {
    path.append('M').append(num(left + x1)).append(' ').append(num(top + y1));
    path.append('L').append(num(left + x2)).append(' ').append(num(top + y2));
  }

  /** Lines x + y = c, cut to the box. */
  private void rising(double apart) {
    for (double c = apart / 2; c < width + height; c += apart) {
      double x1 = Math.max(0, c - height);
      double x2 = Math.min(width, c);
      segment(x1, c - x1, x2, c - x2);
    }
  }

  /** Lines x - y = c, cut to the box. */
  private void falling(double apart) {
    for (double c = apart / 2 - height; c < width; c += apart) {
      double x1 = Math.max(0, c);
      double x2 = Math.min(width, c + height);
      segment(x1, x1 - c, x2, x2 - c);
    }
  }

  private void upright(double apart) {
    for (double x = apart / 2; x < width; x += apart) {
      segment(x, 0, x, height);
    }
  }

  private void level(double apart) {
    for (double y = apart / 2; y < height; y += apart) {
      segment(0, y, width, y);
    }
  }

  /** Round dots, or squares set like a chessboard. */
  private void spots(boolean squares) {
    double size = squares ? step * 0.5 : step * 0.34;
    int row = 0;
    for (double y = step * 0.1; y + size <= height; y += step * 0.6) {
      for (double x = step * (row % 2 == 0 ? 0.1 : 0.7); x + size <= width; x += step * 1.2) {
        if (squares) {
          path.append('M').append(num(left + x)).append(' ').append(num(top + y));
          path.append('h').append(num(size)).append('v').append(num(size));
          path.append('h').append(num(-size)).append('z');
        } else {
          circle(x + size / 2, y + size / 2, size / 2);
        }
      }
      row++;
    }
  }

  private void rings() {
    double radius = step * 0.34;
    for (double y = radius + step * 0.15; y + radius <= height; y += step) {
      for (double x = radius + step * 0.15; x + radius <= width; x += step) {
        circle(x, y, radius);
      }
    }
  }

  private void circle(double x, double y, double radius) {
    String r = num(radius);
    path.append('M').append(num(left + x - radius)).append(' ').append(num(top + y));
    path.append('a').append(r).append(' ').append(r).append(" 0 1 0 ").append(num(2 * radius));
    path.append(" 0a").append(r).append(' ').append(r).append(" 0 1 0 ").append(num(-2 * radius));
    path.append(" 0");
  }

  private void zigzag() {
    double tooth = step * 0.5;
    for (double y = 0; y + tooth <= height; y += step) {
      path.append('M').append(num(left)).append(' ').append(num(top + y + tooth));
      boolean up = true;
      for (double x = 0; x + tooth <= width; x += tooth) {
        path.append('l').append(num(tooth)).append(' ').append(num(up ? -tooth : tooth));
        up = !up;
      }
    }
  }

  private void dashes() {
    int row = 0;
    for (double y = step * 0.3; y < height; y += step * 0.6) {
      for (double x = row % 2 == 0 ? 0 : step * 0.6; x < width; x += step * 1.2) {
        segment(x, y, Math.min(width, x + step * 0.6), y);
      }
      row++;
    }
  }

  private static String num(double value) {
    return Figures.upTo(value, 1);
  }
}
