package spangle.report.fitsheet;

import java.util.List;
import spangle.fit.vent.HolePlace;
import spangle.fit.vent.HungHollow;
import spangle.fit.vent.OpenFront;
import spangle.fit.vent.Task;
import spangle.fit.vent.VentAnswer;
import spangle.measure.Figures;

/** One hollow at the angle it hangs at, with its holes. */
public final class HoleSketch {
  private static final double WIDTH = 640;
  private static final double ROOM = 460;
  private static final int LONGEST_LINE = 74;

  private HoleSketch() {}

  /** The sketch as one svg element. */
  public static String of(HungHollow hung, VentAnswer answer, List<HolePlace> places) {
    Pencil pencil = new Pencil();
    double height = Math.max(hung.hMm(), hung.lMm() / 12);
    Outline turned = Outline.rectangle(hung.lMm(), height, hung.tiltDeg());
    double wide = turned.right() - turned.left();
    double high = turned.high() - turned.low();
    double scale = Math.min(ROOM / wide, 300 / high);
    double floor = 60 + high * scale + 40;
    View view = new View((WIDTH - wide * scale) / 2, floor - 40, scale);
    Outline outline = turned.at(0, 0);
    pencil.shape(view.of(outline.corners()), "#e4e4e4", 2.6, "");
    if (answer.hollow() instanceof OpenFront front) {
      opening(pencil, view, front, outline);
    }
    pencil.line(
        view.x(outline.lowest().xMm()),
        view.y(0),
        view.x(outline.lowest().xMm()) + 160,
        view.y(0),
        1,
        "4 4");
    pencil.words(
        view.x(outline.lowest().xMm()) + 166,
        view.y(0) + 5,
        16,
        "start",
        false,
        Figures.upTo(hung.tiltDeg(), 1) + "\u00b0");
    List<HolePlace> first =
        places.stream().filter(p -> !p.words().startsWith("second dip")).toList();
    Holes.marks(pencil, view, outline, first);
    pencil.words(WIDTH / 2, 24, 18, "middle", true, answer.hollow().words());
    double y = floor + 24;
    for (Task task : Task.values()) {
      if (answer.of(task).isPresent()) {
        for (String line : words(task, answer, answer.of(task).get())) {
          pencil.words(WIDTH / 2, y, 16, "middle", false, line);
          y += 22;
        }
      }
    }
    return pencil.svg(WIDTH, y + 4, "holes as it hangs");
  }

  /** One line, or two where the rule is too long to stand beside the size. */
  private static List<String> words(Task task, VentAnswer answer, spangle.fit.vent.Holes holes) {
    String size = task.word() + " " + holes.asRuled().words() + " " + answer.hollow().scope() + ":";
    String rule = holes.winner().rule();
    return size.length() + rule.length() > LONGEST_LINE
        ? List.of(size, rule)
        : List.of(size + " " + rule);
  }

  /** The opening between the returns, seen from the front. */
  private static void opening(Pencil pencil, View view, OpenFront front, Outline outline) {
    double lip = front.returnMm();
    double rise =
        lip * Math.sin(Math.toRadians(front.tiltDeg()))
            + lip * Math.cos(Math.toRadians(front.tiltDeg()));
    Outline inner =
        Outline.rectangle(front.longMm() - 2 * lip, front.highMm() - 2 * lip, front.tiltDeg());
    double aside = (outline.right() - outline.left() - inner.right() + inner.left()) / 2;
    pencil.shape(view.of(inner.at(aside, rise).corners()), "#fff", 1.4, "");
  }
}
