package spangle.intake.brief;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import spangle.fit.Body;
import spangle.fit.KettleFit;
import spangle.fit.gate.GateCase;
import spangle.fit.gate.GateOpening;
import spangle.fit.gate.Known;
import spangle.fit.vent.Hollow.HollowSection;
import spangle.intake.week.GateRecord;
import spangle.intake.week.Hollow;
import spangle.intake.week.Overlap;
import spangle.intake.week.PartLine;
import spangle.intake.week.ShapeWords;
import spangle.intake.week.Told;
import spangle.intake.week.WeekInput;
import spangle.measure.Box;
import spangle.part.Solid;
import spangle.plan.PartFacts;

/** Puts what a job file says of a part before the gates. */
final class GateCases {
  private static final double BATH_C = 450;

  /** Forms that one sheet, tube or bar makes without a weld. */
  private static final Set<ShapeWords.Form> ONE_PIECE =
      EnumSet.of(
          ShapeWords.Form.PLATE,
          ShapeWords.Form.BLANK,
          ShapeWords.Form.ANGLE,
          ShapeWords.Form.CHANNEL,
          ShapeWords.Form.TUBE,
          ShapeWords.Form.PIPE,
          ShapeWords.Form.BAR,
          ShapeWords.Form.SECTION,
          ShapeWords.Form.FLAT);

  private final WeekInput input;
  private final List<ZincWay> ways;

  GateCases(WeekInput input, List<ZincWay> ways) {
    this.input = input;
    this.ways = ways;
  }

  GateCase of(PartLine line, PartFacts part) {
    boolean zinc = line.wanted().route().zinc();
    return new GateCase(
        zinc,
        new GateCase.Steel(
            part.material(),
            line.metal().thicknessMm(),
            line.metal().thickestMm(),
            line.metal().strengthMpa(),
            line.metal().bendRadiusMm()),
        build(line, part, zinc),
        new GateCase.Heat(
            known(line.heat().sensitive()),
            line.heat().what(),
            line.heat().limitC(),
            zinc ? BATH_C : hottestC(line)),
        records(line, part));
  }

  private GateCase.Build build(PartLine line, PartFacts part, boolean zinc) {
    Optional<ShapeWords> shape = line.body().shape();
    return new GateCase.Build(
        known(line.hollows().welded()),
        shape.map(s -> ONE_PIECE.contains(s.form())).orElse(false),
        hollow(line),
        members(line),
        answered(line.hollows().overlapsTold(), !line.hollows().overlaps().isEmpty()),
        line.hollows().overlaps().stream().map(GateCases::contact).toList(),
        known(line.hollows().pockets()),
        zinc && shape.map(s -> s.form() == ShapeWords.Form.BOX && s.open()).orElse(false)
            ? openFront(part.envelopeMm())
            : Optional.empty(),
        known(line.handling().movingParts()),
        known(line.hollows().soldered()),
        part.envelopeMm(),
        part.massKg(),
        line.hollows().welded().yes() ? OptionalDouble.empty() : flat(shape));
  }

  /**
   * Shorter side of the widest flat face of a form that is one piece; what is welded to it is not
   * in the form, so then the outside size counts.
   */
  private static OptionalDouble flat(Optional<ShapeWords> shape) {
    return shape
        .map(
            s -> {
              List<Double> sizes = s.sizesMm();
              return switch (s.form()) {
                case PIPE, BAR -> OptionalDouble.of(0);
                case TUBE, ANGLE, CHANNEL -> {
                  double length = sizes.get(sizes.size() - 1);
                  double side =
                      sizes.subList(0, sizes.size() - 1).stream()
                          .mapToDouble(mm -> Math.min(mm, length))
                          .max()
                          .orElse(0);
                  yield OptionalDouble.of(side);
                }
                default -> OptionalDouble.empty();
              };
            })
        .orElse(OptionalDouble.empty());
  }

  /** A drawing or shape that shows a closed hollow is believed before a row that says no. */
  private static Known hollow(PartLine line) {
    boolean drawn =
        line.body().drawn().map(s -> s instanceof Solid b && b.voids() > 0).orElse(false);
    boolean closedBox =
        line.body().shape().map(s -> s.form() == ShapeWords.Form.BOX && !s.open()).orElse(false);
    return drawn || closedBox ? Known.YES : known(line.hollows().told());
  }

  /** The members on record; a tube or pipe that is told to be closed is one without holes. */
  private static List<GateCase.Member> members(PartLine line) {
    double wall = line.metal().thicknessMm();
    if (!line.hollows().members().isEmpty() || !line.hollows().told().yes()) {
      return line.hollows().members().stream().map(m -> member(m, wall)).toList();
    }
    return line.body().shape().stream()
        .filter(s -> s.form() == ShapeWords.Form.TUBE || s.form() == ShapeWords.Form.PIPE)
        .map(s -> member(closed(s), wall))
        .toList();
  }

  private static Hollow closed(ShapeWords shape) {
    List<Double> sizes = shape.sizesMm();
    boolean round = shape.form() == ShapeWords.Form.PIPE;
    return new Hollow(
        1,
        sizes.get(0),
        round ? sizes.get(0) : sizes.get(1),
        sizes.get(round ? 1 : 2),
        round,
        Optional.empty(),
        Optional.empty());
  }

  /** The open face is one of the largest: it stands upright when the shortest side lies across. */
  private Optional<GateCase.OpenFront> openFront(Box box) {
    if (ways.isEmpty()) {
      return Optional.empty();
    }
    boolean sideways = goesIn(PartBodies.frontUpright(box)) || !goesIn(Body.of(box));
    return Optional.of(new GateCase.OpenFront(sideways, box.shortestMm()));
  }

  private boolean goesIn(Body body) {
    return ways.stream().anyMatch(way -> KettleFit.goesInUnrolled(body, way.way(), way.rules()));
  }

  private static Known known(Told told) {
    return switch (told) {
      case YES -> Known.YES;
      case NO -> Known.NO;
      case NOTHING -> Known.SILENT;
    };
  }

  private static Known answered(Told told, boolean some) {
    return some ? Known.YES : known(told);
  }

  private static GateCase.Member member(Hollow hollow, double wallMm) {
    double width = Math.max(1, hollow.widthMm() - 2 * wallMm);
    double height = Math.max(1, hollow.heightMm() - 2 * wallMm);
    return new GateCase.Member(
        hollow.count(),
        new HollowSection(
            width,
            height,
            hollow.round(),
            OptionalDouble.of(hollow.lengthMm()),
            OptionalDouble.of(wallMm),
            HollowSection.Use.PLAIN),
        hollow.lengthMm(),
        hollow.vents().map(GateCases::holes),
        hollow.drains().map(GateCases::holes));
  }

  private static GateCase.HoleSet holes(Hollow.HoleSet set) {
    return new GateCase.HoleSet(set.count(), set.diameterMm());
  }

  private static GateCase.Contact contact(Overlap overlap) {
    return new GateCase.Contact(
        new spangle.fit.vent.Hollow.Overlap(
            overlap.areaCm2(),
            overlap.thicknessMm(),
            overlap.otherThicknessMm(),
            OptionalDouble.empty()),
        overlap.weld() == Overlap.Weld.ALL_ROUND,
        overlap.holeMm());
  }

  private Map<String, List<GateOpening>> records(PartLine line, PartFacts part) {
    Map<String, List<GateOpening>> records = new TreeMap<>();
    line.hollows()
        .ventsChecked()
        .forEach(
            s ->
                add(
                    records,
                    GateRecord.Gate.VENTS,
                    new GateOpening(List.of(s.by()), s.at(), "looked through the holes")));
    input.gates().stream()
        .filter(r -> r.jobId().equals(part.jobId()) && r.partId().equals(part.partId()))
        .forEach(r -> add(records, r.gate(), new GateOpening(r.openedBy(), r.at(), r.note())));
    return records;
  }

  private static void add(
      Map<String, List<GateOpening>> records, GateRecord.Gate gate, GateOpening opening) {
    records.computeIfAbsent(gate.word(), w -> new ArrayList<>()).add(opening);
  }

  /** The lowest oven setting its coats could be dried at on the line they go to. */
  private double hottestC(PartLine line) {
    return line.wanted().finishes().stream()
        .flatMap(id -> input.catalogue().coating(id).stream())
        .mapToDouble(c -> c.cure().map(cure -> cure.points().get(0).celsius()).orElse(0.0))
        .max()
        .orElse(0);
  }
}
