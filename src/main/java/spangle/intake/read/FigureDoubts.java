package spangle.intake.read;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import spangle.intake.problem.Meanwhile;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Severity;
import spangle.intake.source.Datum;
import spangle.intake.week.Body;
import spangle.intake.week.Metal;
import spangle.intake.week.PieceFigures;
import spangle.intake.week.ShapeWords;
import spangle.measure.Figures;
import spangle.measure.QuantityKind;
import spangle.part.Agreement;
import spangle.part.AreaMassCheck;
import spangle.part.Given;
import spangle.part.Measured;
import spangle.part.Shape;
import spangle.part.Trap;

/**
 * Holds area, mass, thickness and shape of a piece against one another and asks, with both readings
 * shown, where they disagree: inches for millimetres, pounds for kilograms, one face, the whole
 * job.
 */
final class FigureDoubts {
  private static final Set<ShapeWords.Form> FLAT =
      Set.of(ShapeWords.Form.PLATE, ShapeWords.Form.BLANK);

  /** Nobody cuts sheet narrower than so many times its thickness (common practice). */
  private static final double LEAST_SIDES = 3;

  private static final double MM_PER_INCH = 25.4;

  private FigureDoubts() {}

  /**
   * Notes the doubts of one piece.
   *
   * @param welded whether the piece is welded together: its shape then is the largest of its parts,
   *     and more area and mass than the shape has are no wonder
   */
  static void note(Fields fields, Metal metal, Body body, int pieces, boolean welded) {
    OptionalDouble density = metal.material().densityKgM3();
    boolean mixed = metal.thickestMm() != metal.thicknessMm();
    Optional<Shape> shape = PieceFigures.shape(metal, body);
    if (density.isEmpty() || (mixed && shape.isEmpty() && metal.skins().isEmpty())) {
      return;
    }
    Given given =
        new Given(
            area(metal, body),
            body.massKg(),
            OptionalDouble.of(metal.meanWallMm()),
            body.sizeMm(),
            density.getAsDouble(),
            pieces,
            shape);
    boolean assembled = (mixed || welded) && shape.isPresent();
    for (Agreement.Doubt doubt : AreaMassCheck.check(given).doubts()) {
      if (!assembled || !doubt.readings().isEmpty() || lessThanShape(doubt, given)) {
        note(fields, doubt);
      }
    }
  }

  /** As written, or what the skins come to. */
  private static OptionalDouble area(Metal metal, Body body) {
    return body.areaM2().isEmpty() && !metal.skins().isEmpty()
        ? OptionalDouble.of(metal.skinAreaM2())
        : body.areaM2();
  }

  /**
   * Notes a flat blank with a side under three thicknesses, or a piece that is thinner than its
   * sheet: a size in inches or in metres, or a point that parts thousands. Where area or mass are
   * written, they tell.
   */
  static void noteTiny(Fields fields, Metal metal, Body body) {
    if (body.areaM2().isPresent() || body.massKg().isPresent()) {
      return;
    }
    double thickness = metal.thicknessMm();
    if (body.shape().filter(s -> FLAT.contains(s.form())).isPresent()) {
      double side = Collections.min(body.shape().orElseThrow().sizesMm());
      if (side < LEAST_SIDES * thickness) {
        tiny(fields, "shape", side, thickness);
      }
    }
    if (body.sizeMm().isPresent() && body.sizeMm().get().shortestMm() < 0.9 * thickness) {
      tiny(fields, "length", body.sizeMm().get().shortestMm(), thickness);
    }
  }

  private static void tiny(Fields fields, String field, double side, double thickness) {
    Optional<Datum.Scalar> scalar =
        field.equals("shape")
            ? fields.scalar("shape")
            : fields.quantityScalar("length", QuantityKind.LENGTH);
    fields
        .notes()
        .add(
            new Problem(
                ProblemCode.UNIT_DOUBT,
                Severity.ASK,
                scalar.map(Datum.Scalar::place).orElse(fields.place()),
                field,
                scalar.map(Datum.Scalar::text).orElse(""),
                "sides of sheet over " + Figures.upTo(LEAST_SIDES * thickness, 2) + " mm",
                "a side of "
                    + Figures.upTo(side, 3)
                    + " mm is hardly more than the sheet of "
                    + Figures.upTo(thickness, 2)
                    + " mm is thick: in inches it would be "
                    + Figures.upTo(side * MM_PER_INCH, 1)
                    + " mm, with a point that parts thousands "
                    + Figures.upTo(side * 1000, 0)
                    + " mm",
                "measure one side, then answer with the size and its unit, or keep",
                Meanwhile.GATE_SHUT));
  }

  private static boolean lessThanShape(Agreement.Doubt doubt, Given given) {
    Measured measured = given.shape().orElseThrow().measure(given.densityKgM3());
    return doubt.words().startsWith("mass")
        ? given.massKg().orElse(0) < measured.massKg()
        : given.areaM2().orElse(0) < measured.areaM2();
  }

  private static void note(Fields fields, Agreement.Doubt doubt) {
    boolean mass = doubt.words().startsWith("mass");
    Optional<Datum.Scalar> scalar =
        mass
            ? fields.quantityScalar("mass", QuantityKind.MASS)
            : fields.quantityScalar("area", QuantityKind.AREA);
    boolean skins = scalar.isEmpty() && !mass && fields.has(SkinReader.KEY);
    Place place =
        skins
            ? fields.valuePlace(SkinReader.KEY)
            : scalar.map(Datum.Scalar::place).orElse(fields.place());
    boolean block = doubt.verdict() == Agreement.Verdict.BLOCK;
    String readings =
        doubt.readings().stream()
            .map(r -> "if " + r.trap().supposing() + ": " + r.words())
            .collect(Collectors.joining("; "));
    fields
        .notes()
        .add(
            new Problem(
                code(doubt),
                Severity.ASK,
                place,
                mass ? "mass" : skins ? SkinReader.KEY : "area",
                skins ? fields.text(SkinReader.KEY) : scalar.map(Datum.Scalar::text).orElse(""),
                "within 10 % of one another; over 50 % the part waits",
                doubt.words() + (readings.isEmpty() ? "" : ". " + readings),
                "weigh or measure a piece, then answer with the right value or keep",
                block ? Meanwhile.GATE_SHUT : Meanwhile.AS_WRITTEN));
  }

  private static ProblemCode code(Agreement.Doubt doubt) {
    Optional<Trap> trap = doubt.readings().stream().findFirst().map(Agreement.Reading::trap);
    if (trap.isEmpty()) {
      return doubt.verdict() == Agreement.Verdict.BLOCK
          ? ProblemCode.AREA_MASS_CLASH
          : ProblemCode.AREA_MASS_DOUBT;
    }
    return switch (trap.get()) {
      case ONE_FACE -> ProblemCode.ONE_FACE_DOUBT;
      case AREA_PER_JOB, MASS_PER_JOB -> ProblemCode.PER_JOB_DOUBT;
      case SQUARE_FEET, POUNDS, GRAMS, INCHES, THICKNESS_IN_INCHES -> ProblemCode.UNIT_DOUBT;
      case STEEL_AFTER_ALL, ALUMINIUM_AFTER_ALL -> ProblemCode.AREA_MASS_DOUBT;
    };
  }
}
