package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.part.Measured;
import spangle.part.Shape;
import spangle.part.ShapeException;

/**
 * Settles the unit of a drawing: what somebody has said, else what the file says, else the only one
 * that makes sense. Where more than one does, both readings are shown and somebody has to say.
 */
final class UnitChoice {
  /** A piece may be so many per cent heavier or lighter than its drawing, edges and radii. */
  private static final double MASS_AGREES = 0.25;

  private static final List<DrawingUnit> USUAL = List.of(DrawingUnit.MM, DrawingUnit.IN);
  private static final List<DrawingUnit> MORE =
      List.of(DrawingUnit.MM, DrawingUnit.IN, DrawingUnit.CM, DrawingUnit.M, DrawingUnit.FT);

  /** Whether a shop could have such a part. */
  interface Likely {
    boolean test(Measured measured);
  }

  private final String file;
  private final Problems problems;
  private final Shape inMillimetres;
  private final Asked asked;
  private final Likely likely;

  /**
   * Prepares the choice.
   *
   * @param inMillimetres the shape when the drawing is read as mm
   * @param likely whether a shop could have a part of such figures
   */
  UnitChoice(String file, Problems problems, Shape inMillimetres, Asked asked, Likely likely) {
    this.file = file;
    this.problems = problems;
    this.inMillimetres = inMillimetres;
    this.asked = asked;
    this.likely = likely;
  }

  /** The readings in the units worth showing. */
  List<UnitReading> readings(List<DrawingUnit> units) {
    List<UnitReading> readings = new ArrayList<>();
    for (DrawingUnit unit : units) {
      reading(unit).ifPresent(readings::add);
    }
    return readings;
  }

  private Optional<UnitReading> reading(DrawingUnit unit) {
    try {
      Measured measured = inMillimetres.withLengthsTimes(unit.mm()).measure(asked.densityKgM3());
      return Optional.of(new UnitReading(unit, measured, likely.test(measured)));
    } catch (ShapeException impossible) {
      return Optional.empty();
    }
  }

  /** The unit to reckon with, and the readings that were weighed against one another. */
  record Chosen(DrawingUnit unit, List<UnitReading> readings) {}

  Chosen choose(Optional<DrawingUnit> inFile, Optional<Boolean> metricHint) {
    if (asked.unit().isPresent()) {
      return said(asked.unit().get(), inFile);
    }
    return inFile.isPresent() ? declared(inFile.get()) : open(metricHint);
  }

  private Chosen said(DrawingUnit unit, Optional<DrawingUnit> inFile) {
    if (inFile.isPresent() && inFile.get() != unit) {
      note(
          ProblemCode.DRAWING_NOTE,
          unit.symbol(),
          "the file says it is drawn in "
              + inFile.get().words()
              + "; it is read in "
              + unit.words()
              + ", as was said",
          "make sure of it with one measured length");
    }
    return new Chosen(unit, readings(List.of(unit)));
  }

  private Chosen declared(DrawingUnit unit) {
    Optional<UnitReading> own = reading(unit);
    if (own.isPresent() && own.get().likely()) {
      return new Chosen(unit, List.of(own.get()));
    }
    List<UnitReading> others = new ArrayList<>(own.stream().toList());
    readings(USUAL).stream().filter(r -> r.unit() != unit && r.likely()).forEach(others::add);
    note(
        ProblemCode.DRAWING_UNIT,
        "",
        "the file says " + unit.words() + ", but few parts have such a size: " + words(others),
        "measure one length and say the unit");
    return new Chosen(unit, others);
  }

  private Chosen open(Optional<Boolean> metricHint) {
    List<UnitReading> usual = readings(USUAL);
    OptionalDouble mass = asked.massKg();
    List<UnitReading> fitting =
        mass.isPresent()
            ? readings(MORE).stream().filter(r -> agrees(r, mass.getAsDouble())).toList()
            : usual.stream().filter(UnitReading::likely).toList();
    String hint =
        metricHint
            .map(m -> "; its header measures in " + (m ? "metric" : "English") + " units")
            .orElse("");
    if (fitting.size() == 1) {
      UnitReading only = fitting.get(0);
      note(
          ProblemCode.DRAWING_NOTE,
          only.unit().symbol(),
          "the file names no unit"
              + hint
              + "; it is read in "
              + only.unit().words()
              + (mass.isPresent() ? ", which its mass agrees with: " : ", the only likely size: ")
              + words(usual),
          "say the unit if it is another");
      return new Chosen(only.unit(), usual);
    }
    List<UnitReading> shown = usual.isEmpty() ? readings(MORE) : usual;
    note(
        ProblemCode.DRAWING_UNIT,
        "",
        "the file names no unit"
            + hint
            + (mass.isPresent() ? ", and its mass does not settle it: " : ": ")
            + words(shown),
        "measure one length and say the unit");
    return new Chosen(shown.isEmpty() ? DrawingUnit.MM : shown.get(0).unit(), shown);
  }

  private static boolean agrees(UnitReading reading, double massKg) {
    double ratio = reading.measured().massKg() / massKg;
    return ratio <= 1 + MASS_AGREES && ratio >= 1 / (1 + MASS_AGREES);
  }

  private static String words(List<UnitReading> readings) {
    return readings.stream().map(UnitReading::words).collect(Collectors.joining("; "));
  }

  private void note(ProblemCode code, String value, String why, String remedy) {
    problems.add(code, Place.file(file), "drawing_unit", value, "mm, in, cm, m, ft", why, remedy);
  }
}
