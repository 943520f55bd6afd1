package spangle.report.table;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import spangle.measure.Figures;
import spangle.measure.SafeCell;
import spangle.report.week.Printable;

/** One cell of a table: a text, a number, a moment, or nothing. */
sealed interface Cell {
  /** A cell without content. */
  Cell EMPTY = new Text("");

  /** Words. */
  record Text(String words) implements Cell {
    /** On one line, without control characters. */
    public Text {
      words = Printable.line(words);
    }

    /** Whether a spreadsheet would read the words as something to run. */
    boolean runs() {
      return SafeCell.runs(words);
    }

    @Override
    public String plain() {
      return SafeCell.text(words);
    }
  }

  /** A figure with so many decimals at most. */
  record Figure(double value, int decimals) implements Cell {
    @Override
    public String plain() {
      return Figures.upTo(value, decimals);
    }
  }

  /** A time of the week. */
  record Moment(LocalDateTime at) implements Cell {
    private static final DateTimeFormatter FORM =
        DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

    @Override
    public String plain() {
      return at.format(FORM);
    }
  }

  /** A day. */
  record Day(LocalDate date) implements Cell {
    @Override
    public String plain() {
      return date.toString();
    }
  }

  /** As text of a file: a point for decimals, moments by ISO 8601, nothing a spreadsheet runs. */
  String plain();

  static Cell text(String words) {
    return new Text(words);
  }

  static Cell count(long value) {
    return new Figure(value, 0);
  }

  static Cell number(double value, int decimals) {
    return new Figure(value, decimals);
  }

  static Cell minute(LocalDate monday, int minute) {
    return new Moment(monday.atStartOfDay().plusMinutes(minute));
  }

  static Cell date(LocalDate date) {
    return new Day(date);
  }
}
