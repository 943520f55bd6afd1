package spangle.intake.problem;

/**
 * Where something stands in the inputs.
 *
 * @param file path below the week folder, with forward slashes
 * @param line line or spreadsheet row, from 1; 0 = the file as a whole
 * @param column character or spreadsheet column, from 1; 0 = the line as a whole
 * @param cell spreadsheet cell such as {@code Jobs!C7}, or several merged; empty for text files
 */
public record Place(String file, int line, int column, String cell) implements Comparable<Place> {

  /** A file as a whole. */
  public static Place file(String file) {
    return new Place(file, 0, 0, "");
  }

  /** A character of a text file. */
  public static Place at(String file, int line, int column) {
    return new Place(file, line, column, "");
  }

  /** The words people look it up by: {@code jobs/a.csv:7:12} or {@code jobs/a.xlsx Jobs!C7}. */
  public String words() {
    if (!cell.isEmpty()) {
      return file + " " + cell;
    }
    if (line == 0) {
      return file;
    }
    return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }

  /** Whether it is one spreadsheet cell merged from several, such as {@code Jobs!C7:C9}. */
  public boolean merged() {
    return cell.indexOf(':', cell.lastIndexOf('!') + 1) >= 0;
  }

  @Override
  public int compareTo(Place other) {
    int byFile = file.compareTo(other.file);
    if (byFile != 0) {
      return byFile;
    }
    int byCell = sheet().compareTo(other.sheet());
    if (byCell != 0) {
      return byCell;
    }
    int byLine = Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }

  private String sheet() {
    int mark = cell.lastIndexOf('!');
    return mark < 0 ? "" : cell.substring(0, mark);
  }
}
