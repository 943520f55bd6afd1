package spangle.report.picture;

import spangle.measure.Figures;

/**
 * A part on its way into the kettle, seen from the side: how it hangs and where air and zinc go.
 */
public final class DipPicture {
  private static final double WIDTH = 300;
  private static final double HEIGHT = 170;
  private static final double RIM = 96;

  private DipPicture() {}

  /**
   * Sketch, not to scale but at the true angle.
   *
   * @param tiltDeg angle of the part above level
   * @param lengthMm its long side along the kettle
   * @param heightMm its other side
   */
  public static String of(double tiltDeg, double lengthMm, double heightMm) {
    double angle = Math.toRadians(tiltDeg);
    double across = lengthMm * Math.cos(angle) + heightMm * Math.sin(angle);
    double down = lengthMm * Math.sin(angle) + heightMm * Math.cos(angle);
    double scale = Math.min(150 / across, 58 / down);
    double l = lengthMm * scale;
    double h = Math.max(5, heightMm * scale);
    double cx = WIDTH / 2;
    double cy = 30 + down * scale / 2;
    Svg svg = new Svg(WIDTH, HEIGHT, "dipsketch", "how the part hangs");
    svg.rect(20, 6, WIDTH - 40, 7, "beam");
    svg.path("M30 " + Mark.num(RIM) + "V160H270V" + Mark.num(RIM), "kettle");
    svg.path("M32 108q10 -4 20 0t20 0 20 0 20 0 20 0 20 0 20 0 20 0 20 0 20 0 20 0 16 0", "zinc");
    double lowX = cx - Math.cos(angle) * l / 2 + Math.sin(angle) * h / 2;
    for (double along : new double[] {-0.42, 0.42}) {
      double x = cx + Math.cos(angle) * l * along + Math.sin(angle) * -h / 2;
      double y = cy - Math.sin(angle) * l * along - Math.cos(angle) * h / 2;
      svg.line(x, 13, x, y, "wire");
    }
    svg.turn(-tiltDeg, cx, cy);
    svg.rect(cx - l / 2, cy - h / 2, l, h, "piece");
    svg.circle(cx + l / 2 - 4, cy - h / 2 + 3.5, 2.6, "hole");
    svg.circle(cx - l / 2 + 4, cy + h / 2 - 3.5, 2.6, "hole");
    svg.unturn();
    double highX = cx + Math.cos(angle) * l / 2 + Math.sin(angle) * -h / 2;
    double highY = cy - Math.sin(angle) * l / 2 - Math.cos(angle) * h / 2;
    svg.text(Math.min(highX + 6, 228), highY + 6, 11, "t", "air out here");
    double lowY = cy + Math.sin(angle) * l / 2 + Math.cos(angle) * h / 2;
    svg.text(Math.max(2, lowX - 74), lowY + 2, 11, "t", "zinc out here");
    svg.text(cx, 144, 13, "t mid", Figures.fixed(tiltDeg, 0) + " degrees");
    return svg.done();
  }
}
