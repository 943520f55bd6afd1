package spangle.report.fitsheet;

import java.util.List;
import java.util.Optional;
import spangle.equipment.KettleProfile;
import spangle.fit.Attitude;
import spangle.fit.FitAnswer;
import spangle.fit.vent.HolePlace;
import spangle.measure.Figures;

/**
 * One piece in the kettle for half the width of a dip sheet, beside the hang pattern: the side view
 * alone, to scale, and what the other views would say in words large enough there. How high the
 * hook must stand is not said: the rows of the pattern decide that, not one piece.
 */
final class BesideDrawing {
  private static final double WIDTH = 560;
  private static final double EDGE = 16;
  private static final double TOP = 84;
  private static final double TALLEST = 200;
  private static final double SIZE = 29;
  private static final double LINE = 33;

  private final Tank tank;
  private final Pencil pencil = new Pencil();

  private BesideDrawing(Tank tank) {
    this.tank = tank;
  }

  static String of(
      FitAnswer answer, Attitude attitude, Optional<KettleProfile> kettle, List<HolePlace> holes) {
    Tank tank = Tank.of(answer.space(), kettle, true);
    return new BesideDrawing(tank).draw(answer, attitude, holes);
  }

  private String draw(FitAnswer answer, Attitude attitude, List<HolePlace> holes) {
    double length = tank.usable().lengthMm();
    double depth = tank.usable().depthMm();
    double wide = length + 2 * tank.endMm();
    double height = tank.edgeMm() + tank.floorMm();
    double scale = Math.min((WIDTH - 2 * EDGE) / wide, TALLEST / height);
    double floor = TOP + height * scale;
    View view = new View((WIDTH - length * scale) / 2, floor - tank.floorMm() * scale, scale);
    Outline turned = Outline.turned(attitude.side(), answer.hangDeg());
    double along = turned.right() - turned.left();
    double down = turned.high() - turned.low();
    Outline part = turned.at((length - along) / 2, (depth - down) / 2);

    TankLines lines = new TankLines(pencil, tank, SIZE);
    HangLines hang = new HangLines(pencil, SIZE, TOP - 46);
    lines.walls(view, length, tank.endMm());
    hang.slings(view, part);
    pencil.shape(view.of(part.corners()), "#e4e4e4", 2.6, "");
    lines.zinc(view, length, tank.endMm());
    hang.angle(view, part, answer.hangDeg());
    Holes.marks(pencil, view, part, holes);
    line(floor + LINE, true, "one piece, hang at " + Figures.upTo(answer.hangDeg(), 1) + "\u00b0");
    line(
        floor + 2 * LINE,
        false,
        "usable " + whole(length) + " x " + whole(tank.usable().widthMm()) + " x " + whole(depth));
    line(
        floor + 3 * LINE,
        false,
        "to spare "
            + whole(length - along)
            + " x "
            + whole(tank.usable().widthMm() - attitude.neededWidthMm())
            + " x "
            + whole(depth - down));
    return pencil.svg(WIDTH, floor + 3 * LINE + 14, answer.verdict().code() + ", from the side");
  }

  private void line(double y, boolean bold, String text) {
    pencil.words(WIDTH / 2, y, bold ? SIZE : SIZE - 3, "middle", bold, text);
  }

  /** Down to whole mm: what is to spare is never said larger than it is. */
  private static String whole(double mm) {
    return Figures.fixed(Math.floor(mm + 1e-6), 0);
  }
}
