package spangle.intake.read;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
import spangle.part.Shape;

/** Drawings of a week, each read once for all rows that ask the same of it. */
final class DrawingShelf {
  /** Bytes of drawings read for one week, a file counted each time it is read anew. */
  private static final long MOST_BYTES = 10 * DrawingLimits.BYTES;

  private static final int MOST_PICTURE_CHARS = 400_000;

  /**
   * What a drawing says.
   *
   * @param shape its shape, where it can be measured
   * @param picture a flat pattern as it was understood; empty where there is none to show
   * @param problems what is wrong or doubtful in it
   */
  record Drawn(Optional<Shape> shape, String picture, List<Problem> problems) {
    Drawn {
      problems = List.copyOf(problems);
    }
  }

  private record Key(String file, Asked asked) {}

  private final WeekFolder folder;
  private final Map<Key, Drawn> read = new HashMap<>();
  private long bytes;

  DrawingShelf(WeekFolder folder) {
    this.folder = folder;
  }

  /** Reads a flat pattern or a body, by the end of its name. */
  Drawn drawn(String file, Asked asked) {
    Key key = new Key(file, asked);
    Drawn known = read.get(key);
    if (known == null) {
      known = open(file, asked);
      read.put(key, known);
    }
    return known;
  }

  private Drawn open(String file, Asked asked) {
    Problems problems = new Problems();
    Optional<byte[]> content = folder.bytes(file, DrawingLimits.BYTES, problems);
    bytes += content.map(c -> (long) c.length).orElse(0L);
    if (bytes > MOST_BYTES) {
      problems.add(
          ProblemCode.FILE_TOO_LARGE,
          Place.file(file),
          "drawing",
          "",
          MOST_BYTES + " bytes",
          "the drawings of this week are too large together; this one was not read",
          "export single parts, without pictures and points");
      return new Drawn(Optional.empty(), "", problems.list());
    }
    if (file.toLowerCase(Locale.ROOT).endsWith(".stl")) {
      Optional<Shape> body =
          content
              .flatMap(c -> SolidFile.read(file, c, asked, problems))
              .flatMap(SolidRead::shape)
              .map(Shape.class::cast);
      return new Drawn(body, "", problems.list());
    }
    Optional<FlatRead> flat = content.flatMap(c -> FlatFile.read(file, c, asked, problems));
    return new Drawn(
        flat.flatMap(FlatRead::shape).map(Shape.class::cast),
        flat.map(DrawingShelf::picture).orElse(""),
        problems.list());
  }

  /** A picture larger than this shows more lines than a sheet can. */
  private static String picture(FlatRead flat) {
    String picture = Sketch.svg(flat.layout(), List.of());
    return picture.length() > MOST_PICTURE_CHARS ? "" : picture.strip();
  }
}
