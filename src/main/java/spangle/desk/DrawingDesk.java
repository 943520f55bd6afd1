package spangle.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.intake.drawing.Asked;
import spangle.intake.drawing.DrawingLimits;
import spangle.intake.drawing.FlatFile;
import spangle.intake.drawing.FlatRead;
import spangle.intake.drawing.Sketch;
import spangle.intake.drawing.SolidFile;
import spangle.intake.drawing.SolidRead;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.part.Agreement;
import spangle.part.AreaMassCheck;
import spangle.part.Given;
import spangle.part.Shape;

/** One drawing, for the phone call: its figures, its problems, its picture. */
public final class DrawingDesk {
  private DrawingDesk() {}

  /**
   * A flat pattern and what is to be said of it.
   *
   * @param read the pattern; empty when the file cannot be read
   * @param problems danger first
   */
  public record Flat(Optional<FlatRead> read, List<Problem> problems) {
    /** Copies the list. */
    public Flat {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a flat pattern; never throws for what is in the file. */
  public static Flat flat(Path file, Asked asked) {
    Problems problems = new Problems();
    String name = name(file);
    Optional<FlatRead> read =
        bytes(file, name, problems).flatMap(b -> FlatFile.read(name, b, asked, problems));
    read.flatMap(FlatRead::shape).ifPresent(s -> compare(name, s, asked, problems));
    return new Flat(read, problems.sorted());
  }

  /**
   * A body and what is to be said of it.
   *
   * @param read the body; empty when the file cannot be read
   * @param problems danger first
   */
  public record Body(Optional<SolidRead> read, List<Problem> problems) {
    /** Copies the list. */
    public Body {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a body; never throws for what is in the file. */
  public static Body body(Path file, Asked asked) {
    Problems problems = new Problems();
    String name = name(file);
    Optional<SolidRead> read =
        bytes(file, name, problems).flatMap(b -> SolidFile.read(name, b, asked, problems));
    read.flatMap(SolidRead::shape).ifPresent(s -> compare(name, s, asked, problems));
    return new Body(read, problems.sorted());
  }

  /** The picture of a flat pattern with its problems below it. */
  public static String picture(Flat flat) {
    List<String> captions = new ArrayList<>();
    for (Problem problem : flat.problems()) {
      captions.add(problem.severity().word() + ": " + shortened(problem.why()));
    }
    return flat.read().map(r -> Sketch.svg(r.layout(), captions)).orElse("");
  }

  /** Writes a picture; the file appears whole or not at all. */
  public static void write(Path file, String picture) {
    try {
      Path fresh = file.resolveSibling(name(file) + ".part");
      Files.writeString(fresh, picture);
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static String shortened(String text) {
    return text.length() <= 150 ? text : text.substring(0, 147) + "...";
  }

  static String name(Path file) {
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString();
  }

  static Optional<byte[]> bytes(Path file, String name, Problems problems) {
    try {
      if (!Files.isRegularFile(file)) {
        refuse(name, problems, "there is no such file", "", "give the path of the drawing");
        return Optional.empty();
      }
      long size = Files.size(file);
      if (size > DrawingLimits.BYTES) {
        problems.add(
            ProblemCode.FILE_TOO_LARGE,
            Place.file(name),
            "drawing",
            size + " bytes",
            DrawingLimits.BYTES + " bytes",
            "the drawing has " + size + " bytes; it was not read",
            "export the one part only, without pictures and points");
        return Optional.empty();
      }
      return Optional.of(Files.readAllBytes(file));
    } catch (IOException unreadable) {
      refuse(name, problems, "the file cannot be opened", "", "check who may read it");
      return Optional.empty();
    }
  }

  private static void refuse(
      String name, Problems problems, String why, String limit, String remedy) {
    problems.add(
        ProblemCode.DRAWING_UNREADABLE, Place.file(name), "drawing", "", limit, why, remedy);
  }

  /** Holds the mass somebody gave against the drawing's. */
  static void compare(String name, Shape shape, Asked asked, Problems problems) {
    if (asked.massKg().isEmpty()) {
      return;
    }
    Given given =
        new Given(
            OptionalDouble.empty(),
            asked.massKg(),
            OptionalDouble.empty(),
            Optional.empty(),
            asked.densityKgM3(),
            1,
            Optional.of(shape));
    for (Agreement.Doubt doubt : AreaMassCheck.check(given).doubts()) {
      StringBuilder why = new StringBuilder(doubt.words());
      for (Agreement.Reading reading : doubt.readings()) {
        why.append("; if ").append(reading.trap().supposing()).append(": ").append(reading.words());
      }
      problems.add(
          doubt.verdict() == Agreement.Verdict.BLOCK
              ? ProblemCode.AREA_MASS_CLASH
              : ProblemCode.AREA_MASS_DOUBT,
          Place.file(name),
          "mass",
          "",
          "within 10 % of one another",
          why.toString(),
          "weigh a piece, and measure one length");
    }
  }
}
