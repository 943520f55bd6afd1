package spangle.report.page;

import java.util.ArrayList;
import java.util.List;
import spangle.report.WeekReport;
import spangle.report.Yardstick;
import spangle.report.week.Answer;
import spangle.report.week.Say;

/**
 * The room of the first page in lines: five answers stand one above the other on one sheet, so each
 * may be only so high. Letters are counted with the widths of a broad sans-serif type, and the page
 * is cut to what is sure to fit.
 *
 * @param rowPt height of one answer, points
 */
record GlanceRoom(double rowPt) {
  /** A4 less margins, heading, figures and foot: points left for the ten answers. */
  private static final double PAGE_PT = 636;

  private static final double BROKEN_PT = 46;
  private static final double TABLE_LINE_PT = 15.5;
  private static final int ROWS = 5;

  /** Padding and the line with the question. */
  private static final double AROUND_PT = 30;

  private static final double ANSWER_PT = 17.5;
  private static final double DETAIL_PT = 13.4;
  private static final int ANSWER_LETTERS = 25;
  private static final int DETAIL_LETTERS = 39;
  private static final int DETAIL_LINES = 2;

  static GlanceRoom of(WeekReport report) {
    double room = PAGE_PT;
    if (!report.waiting().findings().isEmpty()) {
      room -= BROKEN_PT;
    }
    Yardstick yardstick = report.yardstick();
    int table = Math.max(yardstick.bounds().size(), yardstick.comparisons().size());
    if (table > 0) {
      room -= (table + 2) * TABLE_LINE_PT;
    }
    return new GlanceRoom(room / ROWS);
  }

  /** The details of an answer that fit under it, each cut to two lines. */
  List<String> details(Answer answer) {
    double room = rowPt - AROUND_PT - lines(answer.answer(), ANSWER_LETTERS) * ANSWER_PT;
    int lines = Math.max(1, (int) (room / DETAIL_PT));
    List<String> shown = new ArrayList<>();
    for (String detail : answer.details()) {
      boolean last = shown.size() + 1 == answer.details().size();
      int free = lines - (last ? 0 : 1);
      int wanted = Math.min(DETAIL_LINES, lines(detail, DETAIL_LETTERS));
      int given = Math.min(wanted, free);
      if ((given < wanted && !shown.isEmpty()) || given <= 0) {
        break;
      }
      shown.add(cut(detail, given));
      lines -= given;
    }
    return List.copyOf(shown);
  }

  private static String cut(String detail, int lines) {
    int letters = lines * DETAIL_LETTERS;
    String cut = Say.cut(detail, letters);
    while (lines(cut, DETAIL_LETTERS) > lines) {
      letters--;
      cut = Say.cut(detail, letters);
    }
    return cut;
  }

  /** Lines a text takes when it breaks at blanks. */
  static int lines(String text, int letters) {
    int lines = 1;
    int used = 0;
    for (String word : text.split(" ", -1)) {
      int length = word.codePointCount(0, word.length());
      if (used > 0 && used + 1 + length > letters) {
        lines++;
        used = 0;
      }
      used += (used > 0 ? 1 : 0) + length;
      while (used > letters) {
        lines++;
        used -= letters;
      }
    }
    return lines;
  }
}
