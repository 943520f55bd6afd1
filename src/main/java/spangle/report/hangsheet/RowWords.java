package spangle.report.hangsheet;

import java.util.ArrayList;
import java.util.List;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HungRow;

/** The rows of a pattern in words, rows alike one below the other said once. */
final class RowWords {
  private RowWords() {}

  /** Lines such as "rows 1-5, each: 25 x A" and "row 6: 12 x A, 3 x B turned". */
  static List<String> of(HangPattern pattern, PieceMarks marks, int faces) {
    List<HungRow> rows = pattern.rows();
    List<String> lines = new ArrayList<>();
    int number = 0;
    int start = 0;
    for (int i = 0; i < rows.size(); i++) {
      HungRow row = rows.get(i);
      number = i > 0 && rows.get(i - 1).face() == row.face() ? number + 1 : 1;
      if (number == 1 || !runs(row, marks).equals(runs(rows.get(i - 1), marks))) {
        start = number;
      }
      boolean last =
          i + 1 == rows.size()
              || rows.get(i + 1).face() != row.face()
              || !runs(rows.get(i + 1), marks).equals(runs(row, marks));
      if (last) {
        String which = start == number ? "row " + number : "rows " + start + "-" + number;
        String where = faces == 1 ? "" : faceName(row.face(), faces) + ", ";
        String each = start == number ? ": " : ", each: ";
        lines.add(where + which + each + runs(row, marks));
      }
    }
    return lines;
  }

  private static String runs(HungRow row, PieceMarks marks) {
    StringBuilder words = new StringBuilder();
    int count = 0;
    for (int i = 0; i < row.runs().size(); i++) {
      HungRow.Run run = row.runs().get(i);
      count += run.count();
      boolean goesOn =
          i + 1 < row.runs().size() && name(row.runs().get(i + 1), marks).equals(name(run, marks));
      if (!goesOn) {
        words.append(words.length() == 0 ? "" : ", ").append(count).append(" x ");
        words.append(name(run, marks));
        count = 0;
      }
    }
    return words.toString();
  }

  private static String name(HungRow.Run run, PieceMarks marks) {
    return marks.letter(run.key()) + (run.turned() ? " turned" : "");
  }

  static String faceName(int face, int faces) {
    if (faces == 1) {
      return "front";
    }
    if (faces == 2) {
      return face == 0 ? "front" : "back";
    }
    return "face " + (face + 1);
  }
}
