package spangle.intake.drawing;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.UnreadableException;
import spangle.part.mesh.Triangles;

/** Reads STL, the binary and the ASCII kind, and tells them apart by size, not by their name. */
final class StlReader {
  private static final int HEAD = 84;
  private static final int FACET = 50;
  private static final double WORLD = 1e9;

  private final String file;
  private final byte[] bytes;
  private final Problems problems;
  private int at;
  private int line = 1;
  private int bad;

  private StlReader(String file, byte[] bytes, Problems problems) {
    this.file = file;
    this.bytes = bytes;
    this.problems = problems;
  }

  /**
   * Reads the triangles of a file.
   *
   * @throws UnreadableException when it is no STL or beyond a limit
   */
  static Triangles read(String file, byte[] bytes, Problems problems) throws UnreadableException {
    if (bytes.length > DrawingLimits.BYTES) {
      throw tooMany(file, "the file is too large", DrawingLimits.BYTES + " bytes");
    }
    StlReader reader = new StlReader(file, bytes, problems);
    Triangles triangles = reader.isText() ? reader.text() : reader.binary();
    if (reader.bad > 0) {
      reader.leftOut(reader.bad + " triangle(s) with numbers that are none were left out");
    }
    if (triangles.count() == 0) {
      throw UnreadableException.grammar(
          Place.file(file), "there are no triangles in the file", "export the body again as STL");
    }
    return triangles;
  }

  private static UnreadableException tooMany(String file, String why, String limit) {
    return UnreadableException.tooLarge(Place.file(file), why, limit);
  }

  private void leftOut(String why) {
    problems.add(
        ProblemCode.DRAWING_LEFT_OUT,
        Place.file(file),
        "drawing",
        "",
        "",
        why,
        "export the body again");
  }

  private long stated() {
    return bytes.length < HEAD
        ? -1
        : Integer.toUnsignedLong(
            ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(HEAD - 4));
  }

  /** Binary files may begin with the word solid too: the size decides, then the words. */
  private boolean isText() {
    if (stated() >= 0 && HEAD + FACET * stated() == bytes.length) {
      return false;
    }
    String start =
        new String(bytes, 0, Math.min(bytes.length, 4_000), StandardCharsets.ISO_8859_1)
            .toLowerCase(Locale.ROOT)
            .stripLeading();
    return start.startsWith("solid") && (start.contains("facet") || start.contains("endsolid"));
  }

  private Triangles binary() throws UnreadableException {
    long stated = stated();
    if (stated < 0) {
      throw UnreadableException.grammar(
          Place.file(file), "the file is too short to be an STL", "export the body again as STL");
    }
    long there = ((long) bytes.length - HEAD) / FACET;
    if (stated > 0 && there == 0) {
      throw UnreadableException.grammar(
          Place.file(file),
          "the file states " + stated + " triangles and holds none: it is no STL or is cut off",
          "export the body again as STL");
    }
    if (stated != there) {
      leftOut("the file states " + stated + " triangles and holds " + there);
    }
    long count = Math.min(stated, there);
    checkCount(count);
    ByteBuffer data = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    Triangles triangles = new Triangles((int) count);
    double[] corners = new double[9];
    for (int t = 0; t < count; t++) {
      int start = HEAD + FACET * t + 12;
      for (int i = 0; i < 9; i++) {
        corners[i] = data.getFloat(start + 4 * i);
      }
      add(triangles, corners);
    }
    return triangles;
  }

  private void checkCount(long count) throws UnreadableException {
    if (count > DrawingLimits.FACETS) {
      throw tooMany(file, "the body has too many triangles", DrawingLimits.FACETS + " triangles");
    }
  }

  private void add(Triangles triangles, double[] corners) {
    for (double number : corners) {
      if (!(Math.abs(number) <= WORLD)) {
        bad++;
        return;
      }
    }
    triangles.add(corners);
  }

  private Triangles text() throws UnreadableException {
    Triangles triangles = new Triangles(1_000);
    double[] corners = new double[9];
    int have = 0;
    boolean ended = false;
    for (String word = word(); word != null; word = word()) {
      ended = false;
      switch (word.toLowerCase(Locale.ROOT)) {
        case "vertex" -> {
          for (int i = 0; i < 3; i++) {
            double number = number(word());
            if (have < 9) {
              corners[have++] = number;
            } else {
              have++;
            }
          }
        }
        case "endfacet" -> {
          if (have == 9) {
            add(triangles, corners);
          } else {
            bad++;
          }
          have = 0;
          checkCount(triangles.count());
        }
        case "endsolid" -> {
          ended = true;
          skipLine();
        }
        default -> {
          if (word.equalsIgnoreCase("solid")) {
            skipLine();
          }
        }
      }
    }
    if (!ended || have > 0) {
      leftOut("the file has no end mark: it may be cut off, and triangles may be missing");
    }
    return triangles;
  }

  private void skipLine() {
    while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
      at++;
    }
  }

  private @Nullable String word() throws UnreadableException {
    while (at < bytes.length && bytes[at] <= ' ' && bytes[at] >= 0) {
      line += bytes[at] == '\n' ? 1 : 0;
      at++;
    }
    if (at >= bytes.length) {
      return null;
    }
    int start = at;
    while (at < bytes.length && (bytes[at] > ' ' || bytes[at] < 0)) {
      at++;
      if (at - start > 200) {
        throw UnreadableException.grammar(
            Place.at(file, line, 0),
            "a word of over 200 letters stands here: the file is no STL or is damaged",
            "export the body again as STL");
      }
    }
    return new String(bytes, start, at - start, StandardCharsets.ISO_8859_1);
  }

  private static double number(@Nullable String word) {
    if (word == null || word.length() > 40) {
      return Double.NaN;
    }
    for (int i = 0; i < word.length(); i++) {
      if ("0123456789.,+-eE".indexOf(word.charAt(i)) < 0) {
        return Double.NaN;
      }
    }
    try {
      return Double.parseDouble(word.replace(',', '.'));
    } catch (NumberFormatException none) {
      return Double.NaN;
    }
  }
}
