package spangle.intake.brief;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.fit.Body;
import spangle.fit.KettleFit;
import spangle.fit.Silhouette.Corner;
import spangle.fit.UsableSpace;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.ShapeWords;
import spangle.intake.week.WeekInput;
import spangle.measure.Box;
import spangle.part.FlatPattern;
import spangle.part.Folded;
import spangle.part.Shape;
import spangle.part.Solid;
import spangle.plan.PartFacts;

/**
 * Real outlines of parts where their shape tells more than the outside size: round parts, angles,
 * channels, flat patterns drawn with their bends, bodies of triangles. Where the file gives an
 * outside size of its own, that size counts.
 */
public final class PartBodies {
  private final Map<String, PartLine> lines = new HashMap<>();
  private final List<UsableSpace> others;

  /**
   * For the parts of a week.
   *
   * @param others other kettles that may be named as a way out
   */
  public PartBodies(WeekInput input, List<UsableSpace> others) {
    this.others = List.copyOf(others);
    for (Job job : input.jobs()) {
      job.parts().forEach(part -> lines.put(key(job.id(), part.id()), part));
    }
  }

  List<UsableSpace> others() {
    return others;
  }

  /** A box with its open face, one of the largest, upright along the kettle. */
  static Body frontUpright(Box box) {
    double across = box.shortestMm();
    return new Body(
        box, Body.of(box).lays().stream().filter(l -> l.acrossMm() <= across + 1e-9).toList());
  }

  /** How a part is hung for zinc: an open box with its face upright wherever that goes in. */
  Body hung(PartFacts part, ZincWay way) {
    boolean openBox =
        Optional.ofNullable(lines.get(key(part.jobId(), part.partId())))
            .flatMap(line -> line.body().shape())
            .map(s -> s.form() == ShapeWords.Form.BOX && s.open())
            .orElse(false);
    Body upright = frontUpright(part.envelopeMm());
    return openBox && KettleFit.goesInUnrolled(upright, way.way(), way.rules())
        ? upright
        : of(part);
  }

  /** The body of a part: its outline, else its outside box. */
  public Body of(PartFacts part) {
    return Optional.ofNullable(lines.get(key(part.jobId(), part.partId())))
        .filter(line -> line.body().sizeMm().isEmpty())
        .flatMap(
            line ->
                line.body().drawn().isPresent()
                    ? drawn(line.body().drawn().get(), part.envelopeMm())
                    : line.body().shape().flatMap(s -> outline(s, line)))
        .orElseGet(() -> Body.of(part.envelopeMm()));
  }

  /** What is drawn, in its hull; its size stays the one that is planned with. */
  private static Optional<Body> drawn(Shape drawn, Box size) {
    if (drawn instanceof FlatPattern flat) {
      return flat.folded()
          .flatMap(f -> hull(f.corners()))
          .map(h -> new Body(size, h.lays(), h.points()));
    }
    return drawn instanceof Solid body
        ? hull(body.corners()).map(h -> new Body(size, h.lays(), points(body.around())))
        : Optional.empty();
  }

  private static List<Body.Point> points(List<Folded.Corner> corners) {
    return corners.stream().map(c -> new Body.Point(c.xMm(), c.yMm(), c.zMm())).toList();
  }

  private static Optional<Body> hull(List<Folded.Corner> corners) {
    return corners.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Body.points(
                corners.stream().map(c -> new double[] {c.xMm(), c.yMm(), c.zMm()}).toList()));
  }

  private static Optional<Body> outline(ShapeWords shape, PartLine line) {
    List<Double> s = shape.sizesMm();
    double t = line.metal().thicknessMm();
    return switch (shape.form()) {
      case PIPE, BAR -> Optional.of(Body.cylinder(s.get(0), s.get(1)));
      case ANGLE ->
          Optional.of(
              Body.prism(
                  List.of(
                      new Corner(0, 0),
                      new Corner(s.get(0), 0),
                      new Corner(s.get(0), t),
                      new Corner(t, s.get(1)),
                      new Corner(0, s.get(1))),
                  s.get(2)));
      case CHANNEL ->
          Optional.of(
              Body.prism(
                  List.of(
                      new Corner(0, 0),
                      new Corner(s.get(0), 0),
                      new Corner(s.get(0), t),
                      new Corner(s.get(2), s.get(1)),
                      new Corner(0, s.get(1))),
                  s.get(3)));
      default -> Optional.empty();
    };
  }

  private static String key(String jobId, String partId) {
    return jobId + '\n' + partId;
  }
}
