package spangle.report.fitsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.equipment.KettleProfile;
import spangle.fit.Attitude;
import spangle.fit.FitAnswer;
import spangle.fit.Shortage;
import spangle.fit.TwoDips;
import spangle.fit.UsableSpace;
import spangle.fit.Verdict;
import spangle.fit.vent.HolePlace;
import spangle.measure.Figures;

/**
 * A kettle from the side and from its end with the part in it, to scale: one side view for one dip,
 * two for two.
 */
public final class KettleDrawing {
  static final double WIDTH = 1000;
  private static final double GAP = 34;

  /** Room for the words under the narrow view, in letter heights. */
  private static final double LABEL_SIZES = 7.6;

  private static final double TOP = 150;
  private static final double BEAM = TOP - 74;
  private static final double PAGE_TALLEST = 380;
  private static final double PAGE_SIZE = 23;
  private static final double SHEET_TALLEST = 235;
  private static final double SHEET_SIZE = 29;

  private final FitAnswer answer;
  private final Tank tank;
  private final double tallest;
  private final double size;
  private final List<HolePlace> holes;
  private final Pencil pencil = new Pencil();
  private final TankLines lines;
  private final HangLines hang;

  private KettleDrawing(
      FitAnswer answer, Optional<KettleProfile> kettle, List<HolePlace> holes, boolean low) {
    this.answer = answer;
    this.tallest = low ? SHEET_TALLEST : PAGE_TALLEST;
    this.size = low ? SHEET_SIZE : PAGE_SIZE;
    this.holes = holes;
    UsableSpace space = drawnSpace(answer);
    boolean liquid = answer.rules().twoDips();
    this.tank = Tank.of(space, kettle, liquid);
    this.lines = new TankLines(pencil, tank, size);
    this.hang = new HangLines(pencil, size, BEAM);
  }

  /**
   * The drawing as one svg element.
   *
   * @param answer how the part goes in
   * @param kettle the kettle where it is known; else only its usable space is drawn
   * @param holes places of vents and drains; may be empty
   */
  public static String of(FitAnswer answer, Optional<KettleProfile> kettle, List<HolePlace> holes) {
    return new KettleDrawing(answer, kettle, holes, false).draw();
  }

  /** The same drawing for a dip sheet: lower, with larger words. */
  public static String low(
      FitAnswer answer, Optional<KettleProfile> kettle, List<HolePlace> holes) {
    return new KettleDrawing(answer, kettle, holes, true).draw();
  }

  /**
   * The drawing for half of a dip sheet, beside the hang pattern: narrower, with the side view
   * only. A part that is rolled or goes in twice needs its other views and keeps them.
   */
  public static String beside(
      FitAnswer answer, Optional<KettleProfile> kettle, List<HolePlace> holes) {
    return answer
        .whole()
        .filter(attitude -> attitude.rollDeg().isEmpty() && answer.rules().twoDips())
        .map(attitude -> BesideDrawing.of(answer, attitude, kettle, holes))
        .orElseGet(() -> low(answer, kettle, holes));
  }

  private String draw() {
    int sides = answer.verdict() == Verdict.TWO_DIPS ? 2 : 1;
    double length = tank.usable().lengthMm() + 2 * tank.endMm();
    double width = tank.usable().widthMm() + 2 * tank.sideMm();
    double height = tank.edgeMm() + tank.floorMm();
    double over = Math.max(0, overEdgeMm());
    double wide = Math.max(length, spanMm());
    double room = WIDTH - (sides + 1) * 2 * GAP;
    double across = Math.max(width, endSpanMm());
    double label = LABEL_SIZES * size;
    double scale =
        Math.min(
            Math.min(room / (sides * wide + across), (room - label) / (sides * wide)),
            tallest / (height + over));
    double end = Math.max(across * scale, label);
    double spare = Math.max(0, room - sides * wide * scale - end) / (sides + 1);
    double floor = TOP + (over + height) * scale;
    double x = GAP + spare / 2;
    List<String> titles = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      View view =
          new View(
              x + (wide - length) / 2 * scale + tank.endMm() * scale,
              floor - tank.floorMm() * scale,
              scale);
      String title = sides == 1 ? "from the side" : i == 0 ? "first dip" : "second dip";
      titles.add(title);
      side(view, i, title);
      x += wide * scale + 2 * GAP + spare;
    }
    View fromEnd =
        new View(
            x + (end - width * scale) / 2 + tank.sideMm() * scale,
            floor - tank.floorMm() * scale,
            scale);
    end(fromEnd);
    return pencil.svg(
        WIDTH, floor + 2 * size + 22, answer.verdict().code() + ", " + String.join(", ", titles));
  }

  /** Of a door only so much length is drawn as the part has. */
  private static UsableSpace drawnSpace(FitAnswer answer) {
    UsableSpace space = answer.space();
    if (!space.anyLength()) {
      return space;
    }
    double part =
        answer
            .whole()
            .map(w -> w.side().alongMm(answer.hangDeg()))
            .or(() -> answer.nearest().map(n -> n.lay().side().alongMm(n.tiltDeg())))
            .orElse(space.depthMm());
    return new UsableSpace(space.name(), part, space.widthMm(), space.depthMm(), space.rimMm());
  }

  private Optional<Outline> part() {
    return part(0);
  }

  /** How it stands in a dip: the second time an outline swung end for end is its own mirror. */
  private Optional<Outline> part(int dip) {
    double depth = tank.usable().depthMm();
    double length = tank.usable().lengthMm();
    if (answer.whole().isPresent()) {
      Outline turned = Outline.turned(answer.whole().get().side(), answer.hangDeg());
      return Optional.of(centred(turned, length, depth));
    }
    if (answer.twoDips().isPresent()) {
      TwoDips dips = answer.twoDips().get();
      Outline turned =
          dip == 0 || dips.outline().isEmpty()
              ? Outline.turned(dips.side(), dips.hangDeg())
              : Outline.swung(dips.side(), dips.hangDeg());
      if (dips.form() == TwoDips.Form.TURNED_OVER) {
        return Optional.of(turned.at((length - dips.lMm()) / 2, depth - dips.reachMm()));
      }
      return Optional.of(turned.at(0, 0));
    }
    return answer
        .nearest()
        .map(n -> centred(Outline.turned(n.lay().side(), n.tiltDeg()), length, depth));
  }

  private static Outline centred(Outline turned, double length, double depth) {
    double wide = turned.right() - turned.left();
    double high = turned.high() - turned.low();
    return turned.at((length - wide) / 2, Math.max(0, (depth - high) / 2));
  }

  private double overEdgeMm() {
    return part().map(p -> p.high() - tank.edgeMm()).orElse(0.0);
  }

  private double spanMm() {
    return part()
        .map(
            p ->
                Math.max(p.right(), tank.usable().lengthMm())
                    - Math.min(p.left(), 0)
                    + 2 * tank.endMm())
        .orElse(0.0);
  }

  private double endSpanMm() {
    return neededWidthMm() + 2 * tank.sideMm();
  }

  private double neededWidthMm() {
    return answer.whole().map(Attitude::neededWidthMm).orElse(answer.acrossMm());
  }

  private void side(View view, int dip, String title) {
    lines.walls(view, tank.usable().lengthMm(), tank.endMm());
    Optional<Outline> drawn = part(dip);
    if (answer.dips() > 0 && tank.liquid()) {
      drawn.ifPresent(outline -> hook(hang.slings(view, outline)));
    }
    drawn.ifPresent(outline -> pencil.shape(view.of(outline.corners()), "#e4e4e4", 2.6, ""));
    lines.zinc(view, tank.usable().lengthMm(), tank.endMm());
    if (answer.twoDips().isPresent()) {
      drawn.ifPresent(outline -> Dips.marks(pencil, view, answer.twoDips().get(), outline, dip));
    }
    drawn.ifPresent(outline -> hang.angle(view, outline, hangDeg()));
    if (answer.whole().isPresent() && answer.whole().get().rollDeg().isEmpty()) {
      drawn.ifPresent(outline -> Holes.marks(pencil, view, outline, holes));
    }
    double top = view.y(tank.usable().depthMm());
    if (answer.twoDips().isEmpty()) {
      drawn.ifPresent(outline -> margins(view, outline));
    }
    pencil.words(
        view.x(tank.usable().lengthMm() / 2),
        view.y(-tank.floorMm()) + size + 7,
        size,
        "middle",
        true,
        title + (tank.liquid() ? "" : " (room, door)"));
    pencil.words(
        view.x(tank.usable().lengthMm() / 2),
        view.y(-tank.floorMm()) + 2 * size + 10,
        size - 3,
        "middle",
        false,
        (answer.space().anyLength()
                ? "a door, "
                : "usable " + mm(tank.usable().lengthMm()) + " long, ")
            + mm(tank.usable().depthMm())
            + (tank.liquid() ? " deep" : " high"));
    if (tank.liquid()) {
      pencil.words(view.x(0) + 5, top - 5, size - 5, "start", false, "zinc");
    }
  }

  private void margins(View view, Outline outline) {
    double length = tank.usable().lengthMm();
    double depth = tank.usable().depthMm();
    double along = length - (outline.right() - outline.left());
    double down = depth - (outline.high() - outline.low());
    double y = view.y(tank.edgeMm() + Math.max(0, overEdgeMm())) - 3 - 0.9 * size;
    pencil.measure(
        view.x(outline.left()),
        y,
        view.x(outline.right()),
        y,
        size - 3,
        mm(outline.right() - outline.left()) + (answer.space().anyLength() ? "" : spare(along)));
    // So far off that the white around its words leaves the wall whole.
    double x = view.x(Math.max(length, outline.right()) + tank.endMm()) + 5 + 0.85 * size;
    pencil.measure(
        x,
        view.y(outline.high()),
        x,
        view.y(outline.low()),
        size - 3,
        mm(outline.high() - outline.low()) + spare(down));
  }

  private static String spare(double mm) {
    return mm >= -5e-7 ? ", " + mm(Math.max(0, mm)) + " to spare" : ", " + mm(-mm) + " MISSING";
  }

  private void hook(double x) {
    answer
        .lift()
        .ifPresent(
            lift ->
                pencil.words(
                    x + 14,
                    BEAM - 24,
                    size - 4,
                    "start",
                    false,
                    "hook at least " + Figures.fixed(lift.hookMm(), 0) + " mm above the rim"));
  }

  private double hangDeg() {
    return answer.nearest().map(Shortage::tiltDeg).orElse(answer.hangDeg());
  }

  private void end(View view) {
    double width = tank.usable().widthMm();
    lines.walls(view, width, tank.sideMm());
    Optional<Outline> seen = part();
    if (seen.isPresent()) {
      Outline side = seen.get();
      double across = neededWidthMm();
      Outline box =
          Outline.rectangle(across, side.high() - side.low(), 0)
              .at((width - across) / 2, side.low());
      Optional<Outline> rolled = Rolled.of(answer, width, side);
      pencil.shape(
          view.of(box.corners()),
          rolled.isPresent() ? "none" : "#e4e4e4",
          rolled.isPresent() ? 1 : 2.6,
          rolled.isPresent() ? "3 3" : "");
      rolled.ifPresent(r -> pencil.shape(view.of(r.corners()), "#e4e4e4", 2.6, ""));
      lines.zinc(view, width, tank.sideMm());
      double y = view.y(tank.edgeMm() + Math.max(0, overEdgeMm())) - 3 - 0.9 * size;
      pencil.measure(
          view.x((width - across) / 2), y, view.x((width + across) / 2), y, size - 3, mm(across));
      pencil.words(
          view.x(width / 2),
          y - size,
          size - 3,
          "middle",
          false,
          spare(width - across).substring(2));
    }
    pencil.words(
        view.x(width / 2),
        view.y(-tank.floorMm()) + size + 7,
        size,
        "middle",
        true,
        "from the end");
    pencil.words(
        view.x(width / 2),
        view.y(-tank.floorMm()) + 2 * size + 10,
        size - 3,
        "middle",
        false,
        "usable " + mm(width) + " wide");
  }

  static String mm(double value) {
    return Figures.upTo(value, 1);
  }
}
