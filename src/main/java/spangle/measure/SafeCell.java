package spangle.measure;

import java.util.regex.Pattern;

/**
 * Text on its way into a table that a spreadsheet will open. A cell that starts like a formula
 * would be run there, so it gets an apostrophe in front, which spreadsheets show as plain text
 * (common advice against CSV injection). Numbers stay numbers.
 */
public final class SafeCell {
  private static final String STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?[0-9]{1,18}([.,][0-9]{1,18})?([eE][+-]?[0-9]{1,3})?");

  private SafeCell() {}

  /** The text as a cell may hold it. */
  public static String text(String text) {
    String clean = withoutControls(text);
    return startsFormula(clean) ? "'" + clean : clean;
  }

  /** The text of a cell without the apostrophe that {@link #text} put in front of a formula. */
  public static String plain(String cell) {
    boolean marked = cell.startsWith("'") && startsFormula(cell.substring(1));
    return marked ? cell.substring(1) : cell;
  }

  /** The text as a CSV field: neutralised, quoted where it must be (RFC 4180). */
  public static String csv(String text, char separator) {
    String safe = text(text);
    boolean quote =
        safe.indexOf(separator) >= 0
            || safe.indexOf('"') >= 0
            || safe.indexOf('\n') >= 0
            || safe.indexOf('\r') >= 0
            || !safe.equals(safe.strip());
    return quote ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }

  private static boolean startsFormula(String text) {
    // Blanks in front do not stop every spreadsheet from reading a formula.
    String start = text.stripLeading();
    boolean marked =
        (!text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0)
            || (!start.isEmpty() && STARTS.indexOf(start.charAt(0)) >= 0);
    return marked && !NUMBER.matcher(text).matches();
  }

  private static String withoutControls(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .filter(c -> c == '\t' || c == '\n' || c == '\r' || !Character.isISOControl(c))
        .forEach(out::appendCodePoint);
    return out.toString();
  }
}
