package spangle.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import spangle.measure.Figures;
import spangle.part.Agreement.Doubt;
import spangle.part.Agreement.Reading;
import spangle.part.Agreement.Verdict;

/**
 * Compares the area and mass of a piece with its shape or, without one, with each other: a sheet of
 * mass m and thickness t has 2 m / (density t) on its two faces. Cut edges are forgiven both ways.
 * Two figures differ by their ratio, the larger over the smaller, less one.
 */
public final class AreaMassCheck {
  /** Above this the figures are asked about. */
  public static final double ASK_ABOVE = 0.10;

  /** Above this the part is blocked. */
  public static final double BLOCK_ABOVE = 0.50;

  private static final double KG_PER_LB = 0.45359237;
  private static final double M2_PER_FT2 = 0.09290304;
  private static final double MM_PER_IN = 25.4;
  private static final double STEEL = 7850;
  private static final double ALUMINIUM = 2700;

  /** A figure between two bounds: with and without cut edges. */
  private record Expected(double least, double most) {
    double apart(double value) {
      if (value < least) {
        return least / value - 1;
      }
      return value > most ? value / most - 1 : 0;
    }

    Expected times(double factor) {
      return new Expected(least * factor, most * factor);
    }
  }

  private final Given given;
  private final List<Finding> findings = new ArrayList<>();

  private record Finding(double apart, Doubt doubt) {}

  private AreaMassCheck(Given given) {
    this.given = given;
  }

  /** Compares whatever is there; figures that are missing are not doubted. */
  public static Agreement check(Given given) {
    AreaMassCheck check = new AreaMassCheck(given);
    if (given.shape().isPresent()) {
      check.againstShape(given.shape().get());
    } else {
      check.againstEachOther();
    }
    check.findings.sort(Comparator.comparingDouble(Finding::apart).reversed());
    List<Doubt> doubts = check.findings.stream().map(Finding::doubt).toList();
    return new Agreement(
        doubts.stream().map(Doubt::verdict).max(Comparator.naturalOrder()).orElse(Verdict.AGREES),
        doubts);
  }

  private void againstShape(Shape shape) {
    Optional<Shape> inches = enlarged(shape);
    given
        .areaM2()
        .ifPresent(
            area -> {
              List<Reading> readings = areaReadings(area, areaOf(shape));
              inches
                  .filter(larger -> areaOf(larger).apart(area) <= ASK_ABOVE)
                  .ifPresent(larger -> readings.add(inchReading(shape, larger)));
              compare("area", area, "m2", areaOf(shape), "its shape", readings);
            });
    given
        .massKg()
        .ifPresent(
            mass -> {
              List<Reading> readings = massReadings(mass, massOf(shape));
              inches
                  .filter(larger -> massOf(larger).apart(mass) <= ASK_ABOVE)
                  .ifPresent(larger -> readings.add(inchReading(shape, larger)));
              compare("mass", mass, "kg", massOf(shape), "its shape", readings);
            });
  }

  private void againstEachOther() {
    if (given.areaM2().isEmpty() || given.massKg().isEmpty() || given.thicknessMm().isEmpty()) {
      return;
    }
    double area = given.areaM2().getAsDouble();
    double mass = given.massKg().getAsDouble();
    double thickness = given.thicknessMm().getAsDouble();
    double faces = 2000 * mass / (given.densityKgM3() * thickness);
    double edges =
        given
            .envelopeMm()
            .map(box -> 2e-6 * (box.longestMm() + box.middleMm()) * thickness)
            .orElse(0.0);
    Expected expected = new Expected(faces, faces + edges);
    List<Reading> readings = areaReadings(area, expected);
    // A mass that is too large by some factor makes the expected area too large by the same.
    massCorrections()
        .forEach(
            correction -> {
              double corrected = correction.toRight.applyAsDouble(mass);
              if (scaledFaces(expected, corrected / mass).apart(area) <= ASK_ABOVE) {
                readings.add(correction.reading(mass, "kg"));
              }
            });
    if (scaledFaces(expected, 1 / MM_PER_IN).apart(area) <= ASK_ABOVE) {
      readings.add(
          new Reading(
              Trap.THICKNESS_IN_INCHES, asWritten(thickness, "mm", thickness * MM_PER_IN, "mm")));
    }
    addMetals(readings, factor -> scaledFaces(expected, 1 / factor).apart(area));
    compare("area", area, "m2", expected, "its mass and thickness", readings);
  }

  private static Expected scaledFaces(Expected expected, double factor) {
    double edges = expected.most - expected.least;
    return new Expected(expected.least * factor, expected.least * factor + edges);
  }

  private void compare(
      String name,
      double value,
      String unit,
      Expected expected,
      String source,
      List<Reading> readings) {
    double apart = expected.apart(value);
    if (!(apart > ASK_ABOVE)) {
      return;
    }
    double nearest = value < expected.least ? expected.least : expected.most;
    String words =
        name
            + " "
            + Figures.significant(value, 4)
            + " "
            + unit
            + " is written, "
            + source
            + " give"
            + (source.contains(" and ") ? " " : "s ")
            + Figures.significant(nearest, 4)
            + " "
            + unit
            + ": "
            + Figures.upTo(100 * apart, 0)
            + " % apart";
    Verdict verdict = apart > BLOCK_ABOVE ? Verdict.BLOCK : Verdict.ASK;
    findings.add(new Finding(apart, new Doubt(verdict, words, readings)));
  }

  private record Correction(Trap trap, DoubleUnaryOperator toRight) {
    Reading reading(double value, String unit) {
      return new Reading(trap, asWritten(value, unit, toRight.applyAsDouble(value), unit));
    }
  }

  private List<Reading> areaReadings(double area, Expected expected) {
    List<Correction> corrections = new ArrayList<>();
    corrections.add(new Correction(Trap.ONE_FACE, value -> 2 * value));
    corrections.add(new Correction(Trap.SQUARE_FEET, value -> value * M2_PER_FT2));
    if (given.pieces() > 1) {
      corrections.add(new Correction(Trap.AREA_PER_JOB, value -> value / given.pieces()));
    }
    return matching(corrections, area, "m2", expected);
  }

  private List<Reading> massReadings(double mass, Expected expected) {
    List<Reading> readings = matching(massCorrections(), mass, "kg", expected);
    addMetals(readings, factor -> expected.times(factor).apart(mass));
    return readings;
  }

  private List<Correction> massCorrections() {
    List<Correction> corrections = new ArrayList<>();
    corrections.add(new Correction(Trap.POUNDS, value -> value * KG_PER_LB));
    corrections.add(new Correction(Trap.GRAMS, value -> value / 1000));
    if (given.pieces() > 1) {
      corrections.add(new Correction(Trap.MASS_PER_JOB, value -> value / given.pieces()));
    }
    return corrections;
  }

  private static List<Reading> matching(
      List<Correction> corrections, double value, String unit, Expected expected) {
    List<Reading> readings = new ArrayList<>();
    for (Correction correction : corrections) {
      if (expected.apart(correction.toRight.applyAsDouble(value)) <= ASK_ABOVE) {
        readings.add(correction.reading(value, unit));
      }
    }
    return readings;
  }

  private void addMetals(List<Reading> readings, DoubleUnaryOperator apartAtDensityRatio) {
    double density = given.densityKgM3();
    if (apartAtDensityRatio.applyAsDouble(STEEL / density) <= ASK_ABOVE) {
      readings.add(new Reading(Trap.STEEL_AFTER_ALL, asWritten(density, "kg/m3", STEEL, "kg/m3")));
    }
    if (apartAtDensityRatio.applyAsDouble(ALUMINIUM / density) <= ASK_ABOVE) {
      readings.add(
          new Reading(Trap.ALUMINIUM_AFTER_ALL, asWritten(density, "kg/m3", ALUMINIUM, "kg/m3")));
    }
  }

  private Reading inchReading(Shape shape, Shape larger) {
    return new Reading(
        Trap.INCHES,
        "as written it is "
            + size(shape)
            + " mm, "
            + Skin.m2(areaOf(shape).most)
            + "; if in inches "
            + size(larger)
            + " mm, "
            + Skin.m2(areaOf(larger).most));
  }

  private String size(Shape shape) {
    var box = shape.measure(given.densityKgM3()).envelopeMm();
    return Figures.upTo(box.lengthMm(), 1)
        + " x "
        + Figures.upTo(box.widthMm(), 1)
        + " x "
        + Figures.upTo(box.heightMm(), 1);
  }

  private static Optional<Shape> enlarged(Shape shape) {
    try {
      return Optional.of(shape.withLengthsTimes(MM_PER_IN));
    } catch (ShapeException tooLarge) {
      return Optional.empty();
    }
  }

  private Expected areaOf(Shape shape) {
    return new Expected(
        shape.measure(given.densityKgM3(), Edges.IGNORED).areaM2(),
        shape.measure(given.densityKgM3(), Edges.COUNTED).areaM2());
  }

  private Expected massOf(Shape shape) {
    double mass = shape.measure(given.densityKgM3()).massKg();
    return new Expected(mass, mass);
  }

  private static String asWritten(double value, String unit, double right, String rightUnit) {
    return "as written "
        + Figures.significant(value, 4)
        + " "
        + unit
        + ", then "
        + Figures.significant(right, 4)
        + " "
        + rightUnit;
  }
}
