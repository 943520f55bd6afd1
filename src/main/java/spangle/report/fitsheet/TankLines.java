package spangle.report.fitsheet;

/** A kettle or room as lines: walls, usable space, dross, the zinc's surface. */
final class TankLines {
  private final Pencil pencil;
  private final Tank tank;
  private final double size;

  /**
   * @param size height of letters
   */
  TankLines(Pencil pencil, Tank tank, double size) {
    this.pencil = pencil;
    this.tank = tank;
    this.size = size;
  }

  void walls(View view, double lengthMm, double gapMm) {
    double left = view.x(-gapMm);
    double right = view.x(lengthMm + gapMm);
    double bottom = view.y(-tank.floorMm());
    double edge = view.y(tank.edgeMm());
    if (tank.liquid() && tank.known()) {
      for (double x = left + 8; x < right - 2; x += 11) {
        double y = Math.min(view.y(0) + 3, bottom - 2);
        pencil.line(x, bottom - 2, Math.min(right, x + (bottom - y) * 0.6), y, 0.8, "");
      }
    }
    pencil.path(
        "M"
            + Pencil.num(left)
            + " "
            + Pencil.num(edge)
            + "V"
            + Pencil.num(bottom)
            + "H"
            + Pencil.num(right)
            + "V"
            + Pencil.num(edge),
        5);
    pencil.box(
        view.x(0),
        view.y(tank.usable().depthMm()),
        lengthMm * view.scale(),
        tank.usable().depthMm() * view.scale(),
        "none",
        1.1,
        "7 5");
    if (tank.liquid() && tank.known() && tank.floorMm() * view.scale() > 16) {
      pencil.words(
          view.x(lengthMm / 2), (view.y(0) + bottom) / 2 + 5, size - 5, "middle", false, "dross");
    }
  }

  /** The surface, over the part: what is under it is covered. */
  void zinc(View view, double lengthMm, double gapMm) {
    if (!tank.liquid()) {
      return;
    }
    double y = view.y(tank.usable().depthMm());
    StringBuilder wave =
        new StringBuilder("M" + Pencil.num(view.x(-gapMm) + 3) + " " + Pencil.num(y));
    double wide = view.x(lengthMm + gapMm) - view.x(-gapMm) - 6;
    int waves = (int) Math.max(1, Math.round(wide / 12));
    double step = wide / waves;
    String one =
        "q"
            + Pencil.num(step / 4)
            + " -4 "
            + Pencil.num(step / 2)
            + " 0t"
            + Pencil.num(step / 2)
            + " 0";
    wave.append(one.repeat(waves));
    pencil.path(wave.toString(), 1.8);
  }
}
