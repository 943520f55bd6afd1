package spangle.part.flat;

/** A rigid motion in space: a turn, then a shift. Rows of the matrix, then the shift. */
final class Motion {
  static final Motion REST =
      new Motion(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1}, new double[] {0, 0, 0});

  private final double[] turn;
  private final double[] shift;

  private Motion(double[] turn, double[] shift) {
    this.turn = turn;
    this.shift = shift;
  }

  double[] apply(double x, double y, double z) {
    double[] to = new double[3];
    for (int i = 0; i < 3; i++) {
      to[i] = turn[3 * i] * x + turn[3 * i + 1] * y + turn[3 * i + 2] * z + shift[i];
    }
    return to;
  }

  /** First the other motion, then this. */
  Motion after(Motion first) {
    double[] product = new double[9];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        for (int k = 0; k < 3; k++) {
          product[3 * i + j] += turn[3 * i + k] * first.turn[3 * k + j];
        }
      }
    }
    return new Motion(product, apply(first.shift[0], first.shift[1], first.shift[2]));
  }

  /**
   * What a bend does to the part of the sheet on one side of its line.
   *
   * @param on a point of the line
   * @param away unit vector in the sheet, square to the line, towards the side that moves
   * @param angle how far it turns, radians
   * @param up 1 towards the viewer, -1 away
   * @param zoneMm flat length of the bent zone
   * @param middleMm radius of the middle of the sheet in the bend
   */
  static Motion bend(Point on, Point away, double angle, int up, double zoneMm, double middleMm) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double nx = away.x();
    double ny = away.y();
    double s = up * sin;
    double[] turn = {
      1 + (cos - 1) * nx * nx,
      (cos - 1) * nx * ny,
      -s * nx,
      (cos - 1) * nx * ny,
      1 + (cos - 1) * ny * ny,
      -s * ny,
      s * nx,
      s * ny,
      cos
    };
    double out = -zoneMm / 2 + middleMm * sin - zoneMm / 2 * cos;
    double rise = up * (middleMm * (1 - cos) - zoneMm / 2 * sin);
    Motion about = new Motion(turn, new double[] {0, 0, 0});
    double[] moved = about.apply(on.x(), on.y(), 0);
    return new Motion(
        turn,
        new double[] {
          on.x() - moved[0] + out * nx, on.y() - moved[1] + out * ny, -moved[2] + rise
        });
  }
}
