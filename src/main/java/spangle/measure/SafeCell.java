package spangle.measure;

/**
 * Text on its way into a table that a spreadsheet will open. A cell that starts like a formula
 * would be run there, so it gets an apostrophe in front, which spreadsheets show as plain text
 * (common advice against CSV injection). For words: a number is written as a number.
 */
public final class SafeCell {
  private static final String STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  private SafeCell() {}

  /** The text as a cell may hold it. */
  public static String text(String text) {
    String clean = withoutControls(text);
    return runs(clean) ? "'" + clean : clean;
  }

  /** The text of a cell without the apostrophe that {@link #text} put in front of a formula. */
  public static String plain(String cell) {
    boolean marked = cell.startsWith("'") && runs(cell.substring(1));
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

  /** Whether a spreadsheet would run words, or reckon them: the name +1 would become a 1. */
  public static boolean runs(String words) {
    // Blanks in front do not stop every spreadsheet from reading a formula.
    String start = words.stripLeading();
    return (!words.isEmpty() && STARTS.indexOf(words.charAt(0)) >= 0)
        || (!start.isEmpty() && STARTS.indexOf(start.charAt(0)) >= 0);
  }

  private static String withoutControls(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .filter(c -> c == '\t' || c == '\n' || c == '\r' || !Character.isISOControl(c))
        .forEach(out::appendCodePoint);
    return out.toString();
  }
}
