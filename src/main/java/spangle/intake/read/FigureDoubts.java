package spangle.intake.read;

import java.util.Optional;
import java.util.OptionalDouble;
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
    if (density.isEmpty() || (mixed && PieceFigures.shape(metal, body).isEmpty())) {
      return;
    }
    Optional<Shape> shape = PieceFigures.shape(metal, body);
    Given given =
        new Given(
            body.areaM2(),
            body.massKg(),
            OptionalDouble.of(metal.thicknessMm()),
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
    Place place = scalar.map(Datum.Scalar::place).orElse(fields.place());
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
                mass ? "mass" : "area",
                scalar.map(Datum.Scalar::text).orElse(""),
                "within 10 % of one another; over 50 % the part waits",
                doubt.words() + (readings.isEmpty() ? "" : ". " + readings),
                "weigh or measure a piece, then answer with the right value or keep",
                block ? Meanwhile.GATE_SHUT : Meanwhile.AS_WRITTEN,
                "",
                "",
                "",
                Problem.NO_DUE));
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
