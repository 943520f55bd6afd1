package spangle.intake.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.measure.SafeCell;

/**
 * Separated text as a grid: comma, semicolon, tab or bar, found by looking; cells may be quoted and
 * may then hold separators, doubled quotes and line ends (RFC 4180).
 */
public final class CsvSource {
  private static final char[] SEPARATORS = {',', ';', '\t', '|'};
  private static final int LOOKED_AT = 40;

  /** A quoted cell that runs over more lines than this was not meant to be one. */
  private static final int LONGEST_QUOTED_LINES = 30;

  private final String file;
  private final String text;
  private final Problems problems;
  private final char separator;
  private int at;
  private int line = 1;
  private int lineStart;

  private CsvSource(String file, String text, char separator, Problems problems) {
    this.file = file;
    this.text = text;
    this.separator = separator;
    this.problems = problems;
  }

  /**
   * Reads a file.
   *
   * @param file path for places
   * @param text the text
   * @param problems takes quotes that never end
   * @throws UnreadableException beyond the limits
   */
  public static Grid read(String file, String text, Problems problems) throws UnreadableException {
    XlsxPackage.requireText(file, text);
    String body = text;
    int skipped = 0;
    char separator = found(body);
    int firstEnd = body.indexOf('\n');
    String first = (firstEnd < 0 ? body : body.substring(0, firstEnd)).strip();
    if (first.length() == 5 && first.toLowerCase(Locale.ROOT).startsWith("sep=")) {
      separator = first.charAt(4);
      body = firstEnd < 0 ? "" : body.substring(firstEnd + 1);
      skipped = 1;
    }
    CsvSource source = new CsvSource(file, body, separator, problems);
    source.line += skipped;
    return source.grid();
  }

  /** The separator that splits the first lines most evenly into most cells. */
  static char found(String text) {
    char best = ',';
    long bestScore = -1;
    for (char candidate : SEPARATORS) {
      long score = score(text, candidate);
      if (score > bestScore) {
        bestScore = score;
        best = candidate;
      }
    }
    return best;
  }

  private static long score(String text, char candidate) {
    List<Integer> counts = new ArrayList<>();
    int count = 0;
    boolean quoted = false;
    boolean something = false;
    for (int i = 0; i < text.length() && counts.size() < LOOKED_AT; i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == '\n' || c == '\r') {
        // A quote left open must not swallow the file: every line is counted for itself.
        quoted = false;
        if (something) {
          counts.add(count);
        }
        count = 0;
        something = false;
      } else if (c == candidate && !quoted) {
        count++;
        something = true;
      } else if (!Character.isWhitespace(c)) {
        something = true;
      }
    }
    if (something) {
      counts.add(count);
    }
    int most = counts.stream().mapToInt(Integer::intValue).max().orElse(0);
    if (most == 0) {
      return 0;
    }
    // Lines that have as many separators as the widest count most: headings and rows agree.
    long alike = counts.stream().filter(c -> c == most).count();
    long any = counts.stream().filter(c -> c > 0).count();
    return alike * 1_000L * Math.min(most, 50) + any;
  }

  private Grid grid() throws UnreadableException {
    List<Grid.Row> rows = new ArrayList<>();
    int values = 0;
    while (at < text.length()) {
      Grid.Row row = row();
      values += row.cells().size();
      rows.add(row);
      if (rows.size() > Limits.ROWS || values > Limits.VALUES) {
        throw UnreadableException.tooLarge(
            Place.at(file, line, 0), "the file has too many rows", Limits.ROWS + " rows");
      }
    }
    return new Grid(Place.file(file), rows);
  }

  private Grid.Row row() throws UnreadableException {
    Place start = Place.at(file, line, 1);
    List<Datum.Scalar> cells = new ArrayList<>();
    while (true) {
      cells.add(cell());
      if (cells.size() > Limits.COLUMNS) {
        throw UnreadableException.tooLarge(
            start, "a row has too many cells", Limits.COLUMNS + " columns");
      }
      if (at >= text.length()) {
        return new Grid.Row(start, cells);
      }
      char c = text.charAt(at);
      if (c == separator) {
        at++;
        continue;
      }
      endLine(c);
      return new Grid.Row(start, cells);
    }
  }

  private Datum.Scalar cell() throws UnreadableException {
    while (at < text.length() && blank(text.charAt(at))) {
      at++;
    }
    Place place = Place.at(file, line, at - lineStart + 1);
    if (at < text.length() && text.charAt(at) == '"') {
      int end = closingQuote();
      if (end >= 0) {
        return quoted(place, end);
      }
      problems.add(
          ProblemCode.QUOTE_OPEN,
          place,
          "",
          text.substring(at, Math.min(text.length(), at + 30)),
          "",
          "a quoted cell is not closed as it should be",
          "close the quote, or double it where it stands for inches");
    }
    int start = at;
    while (at < text.length() && !endsCell(text.charAt(at))) {
      at++;
    }
    return scalar(place, text.substring(start, at));
  }

  private Datum.Scalar quoted(Place place, int end) throws UnreadableException {
    String inner = text.substring(at + 1, end).replace("\"\"", "\"");
    for (int i = at; i < end; i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && !(i + 1 < end && text.charAt(i + 1) == '\n'))) {
        line++;
        lineStart = i + 1;
      }
    }
    at = end + 1;
    while (at < text.length() && blank(text.charAt(at))) {
      at++;
    }
    return scalar(place, inner);
  }

  /** Index of the quote that ends the cell starting here; negative where none does. */
  private int closingQuote() {
    int lines = 0;
    for (int i = at + 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' && ++lines > LONGEST_QUOTED_LINES) {
        return -1;
      }
      if (c != '"') {
        continue;
      }
      if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
        i++;
        continue;
      }
      int next = i + 1;
      while (next < text.length() && blank(text.charAt(next))) {
        next++;
      }
      return next >= text.length() || endsCell(text.charAt(next)) ? i : -1;
    }
    return -1;
  }

  private Datum.Scalar scalar(Place place, String value) throws UnreadableException {
    if (value.length() > Limits.VALUE_CHARS) {
      throw UnreadableException.tooLarge(
          place,
          "one cell has " + value.length() + " characters",
          Limits.VALUE_CHARS + " characters");
    }
    return new Datum.Scalar(place, SafeCell.plain(value.strip()));
  }

  private boolean endsCell(char c) {
    return c == separator || c == '\n' || c == '\r';
  }

  private boolean blank(char c) {
    return c != separator && (c == ' ' || c == '\t' || c == '\u00a0');
  }

  private void endLine(char c) {
    at++;
    if (c == '\r' && at < text.length() && text.charAt(at) == '\n') {
      at++;
    }
    line++;
    lineStart = at;
  }
}
