package spangle.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.intake.drawing.Asked;
import spangle.intake.drawing.DrawingUnit;
import spangle.measure.Box;
import spangle.measure.MeasureException;
import spangle.measure.Numbers;
import spangle.measure.Quantities;

/** What a person knows of a part beside its drawing. */
final class DrawingOptions {
  @Option(
      names = "--unit",
      paramLabel = "U",
      description = "Unit of the drawing: mm, in, cm, m, ft. In place of what the file says.")
  private @Nullable String unit;

  @Option(
      names = "--mass",
      paramLabel = "M",
      description = "Mass of one piece, to hold the drawing against, e.g. 0.28kg.")
  private @Nullable String mass;

  @Option(
      names = "--folded",
      paramLabel = "LxWxH",
      description = "Outside size after bending, e.g. 120x80x40mm.")
  private @Nullable String folded;

  @Option(
      names = "--bend-angle",
      paramLabel = "DEG",
      description = "How far the sheet is turned at bend lines without an angle of their own.")
  private @Nullable String bendAngle;

  @Option(
      names = "--bend-radius",
      paramLabel = "R",
      description = "Inside radius of bends, e.g. 2mm; else the thickness.")
  private @Nullable String bendRadius;

  @Option(
      names = "--picture",
      paramLabel = "FILE.svg",
      description = "Draw what was understood, doubtful places numbered.")
  private @Nullable Path picture;

  Optional<Path> picture() {
    return Optional.ofNullable(picture).map(file -> Ask.svg("--picture", file));
  }

  Asked asked(double thicknessMm, double densityKgM3) {
    if (!(thicknessMm > 0)) {
      throw ExitException.usage("--thickness is 0: give the thickness of the sheet");
    }
    return new Asked(
        thicknessMm,
        densityKgM3,
        length(mass, text -> Ask.massKg("--mass", text)),
        unit == null ? Optional.empty() : Optional.of(unit(unit)),
        folded == null ? Optional.empty() : Optional.of(box(folded)),
        length(bendAngle, DrawingOptions::degrees),
        length(bendRadius, text -> Ask.lengthMm("--bend-radius", text)));
  }

  /** What is known of a body: it has no sheet thickness and no bends. */
  Asked askedOfBody(double densityKgM3) {
    refuseForBody(folded != null, "--folded");
    refuseForBody(bendAngle != null, "--bend-angle");
    refuseForBody(bendRadius != null, "--bend-radius");
    refuseForBody(picture != null, "--picture");
    return asked(1, densityKgM3);
  }

  private static void refuseForBody(boolean stray, String option) {
    if (stray) {
      throw ExitException.usage(option + " goes with --flat only: leave it out");
    }
  }

  private static OptionalDouble length(@Nullable String text, ToDoubleFunction<String> reader) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    double value = reader.applyAsDouble(text);
    if (!(value > 0)) {
      throw new MeasureException(text, "a measure above zero", "leave it out if it is not known");
    }
    return OptionalDouble.of(value);
  }

  private static double degrees(String text) {
    double degrees = Numbers.parse(text.replaceFirst("(?i)\\s*(deg|degrees|°)$", ""));
    if (!(degrees > 0 && degrees <= 165)) {
      throw new MeasureException(text, "a bend angle", "it lies above 0 and up to 165 degrees");
    }
    return degrees;
  }

  private static Box box(String text) {
    return Quantities.box(text);
  }

  private static DrawingUnit unit(String text) {
    return DrawingUnit.parse(text)
        .orElseThrow(
            () ->
                ExitException.usage(
                    "--unit '"
                        + text
                        + "' is not known: use mm, in, cm, m, ft, dm, yd, mil or um"));
  }

  /** Options that only a drawing can use. */
  void refuseStrays() {
    refuse(unit != null, "--unit");
    refuse(mass != null, "--mass");
    refuse(folded != null, "--folded");
    refuse(bendAngle != null, "--bend-angle");
    refuse(bendRadius != null, "--bend-radius");
    refuse(picture != null, "--picture");
  }

  private static void refuse(boolean stray, String option) {
    if (stray) {
      throw ExitException.usage(option + " goes with a drawing only: leave it out");
    }
  }
}
