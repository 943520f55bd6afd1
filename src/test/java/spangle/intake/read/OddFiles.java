package spangle.intake.read;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** The same rows in every kind of file, in the manners people and programs have. */
final class OddFiles {
  private static final ObjectMapper JSON = new ObjectMapper();

  private OddFiles() {}

  static byte[] csv(List<Map<String, String>> rows, SplittableRandom random) {
    char separator = ",;\t|".charAt(random.nextInt(4));
    String end = random.nextBoolean() ? "\n" : "\r\n";
    StringBuilder out = new StringBuilder(random.nextInt(4) == 0 ? "\uFEFF" : "");
    for (int i = random.nextInt(4); i > 0; i--) {
      out.append(i % 2 == 0 ? "" : "List of this week").append(end);
    }
    line(out, OddCells.HEADINGS, separator, end);
    for (Map<String, String> row : rows) {
      line(out, row.values(), separator, end);
      if (random.nextInt(6) == 0) {
        out.append(end);
      }
    }
    Charset charset =
        random.nextInt(4) == 0 ? Charset.forName("windows-1252") : StandardCharsets.UTF_8;
    return out.toString().getBytes(charset);
  }

  private static void line(StringBuilder out, Iterable<String> cells, char separator, String end) {
    String between = "";
    for (String cell : cells) {
      // Every cell quoted and on one line: what a row holds and where it stands is then certain.
      out.append(between).append('"').append(cell.replace('\n', ' ').replace("\"", "\"\""));
      out.append('"');
      between = String.valueOf(separator);
    }
    out.append(end);
  }

  /** One row a line, so that a place names its row. */
  static byte[] json(List<Map<String, String>> rows, boolean grouped) {
    return rows.stream()
        .map(OddFiles::object)
        .collect(
            Collectors.joining(",\n", grouped ? "{\"jobs\": [\n" : "[\n", grouped ? "\n]}" : "]"))
        .getBytes(StandardCharsets.UTF_8);
  }

  /** One row a line, in flow style; a JSON object is a YAML mapping. */
  static byte[] yaml(List<Map<String, String>> rows) {
    return rows.stream()
        .map(row -> "  - " + object(row) + "\n")
        .collect(Collectors.joining("", "jobs:\n", ""))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String object(Map<String, String> row) {
    try {
      return JSON.writeValueAsString(row);
    } catch (JsonProcessingException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Some bytes changed, dropped, doubled or put in. */
  static byte[] spoiled(byte[] bytes, SplittableRandom random) {
    byte[] out = bytes.clone();
    for (int i = 1 + random.nextInt(6); i > 0 && out.length > 0; i--) {
      int at = random.nextInt(out.length);
      int length = 1 + random.nextInt(Math.min(40, out.length - at));
      switch (random.nextInt(5)) {
        case 0 -> out[at] = (byte) random.nextInt(256);
        case 1 -> out[at] = (byte) "\"',;:{}[]&*!|>-#\n\t<\\".charAt(random.nextInt(20));
        case 2 -> out = joined(out, 0, at, out, at + length, out.length);
        case 3 -> out = joined(out, 0, at + length, out, at, out.length);
        default -> out = joined(out, 0, at, out, at, at + 1 + random.nextInt(length));
      }
    }
    return out;
  }

  private static byte[] joined(byte[] a, int from, int to, byte[] b, int start, int end) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(a, from, to - from);
    out.write(b, start, end - start);
    return out.toByteArray();
  }
}
