package spangle.intake.read;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import spangle.intake.source.Datum;

/**
 * How many pieces a person wrote. Pieces are whole: a mark before three digits parts thousands
 * unless the digits are noughts, which some programs print behind every whole number.
 *
 * @param pieces as counted; empty where they are none or may be two numbers
 * @param why what is wrong; empty where they are counted
 * @param remedy what to do about it
 */
record PieceCount(OptionalInt pieces, String why, String remedy) {
  /** More than any shop finishes of one part in a week. */
  static final int MOST = 1_000_000;

  private static final int DOZEN = 12;
  private static final int UNIT_GROUP = 3;
  private static final String UNIT =
      "\\s*(pcs?\\.?|pieces?|stk\\.?|st\u00fcck|nos?\\.?|off|ea\\.?|each|dz\\.?|doz(?:en)?\\.?)?";
  private static final int IGNORE_CASE = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;

  private static final Pattern COUNT =
      Pattern.compile(
          "([0-9]{1,9}|[0-9]{1,3}(?:([.,' \u00a0\u202f\u2019])[0-9]{3})(?:\\2[0-9]{3})*)"
              + "(?:[.,]0{1,2}|[.,]0{4,})?"
              + UNIT,
          IGNORE_CASE);

  /** Three digits behind a mark: a thousand times as much, or decimals. */
  private static final Pattern THREE_BEHIND_A_MARK =
      Pattern.compile("([0-9]{1,3})[.,]([0-9]{3})" + UNIT, IGNORE_CASE);

  /** Marks that can only part thousands; decimals may only be noughts. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "([0-9]{1,9}|[0-9]{1,3}(?:([' \u00a0\u202f\u2019])[0-9]{3})(?:\\2[0-9]{3})*)(?:\\.0+)?"
              + UNIT,
          IGNORE_CASE);

  /**
   * Counts.
   *
   * @param cell of a table; a number a workbook holds has a point before its decimals, always
   * @param decimal what a comma before three digits means in this file, where somebody said so
   */
  static PieceCount of(Datum.Scalar cell, String text, Optional<ColumnRules.Decimal> decimal) {
    String written = text.strip();
    if (ColumnRules.isStoredNumber(cell)) {
      return counted(PLAIN.matcher(written));
    }
    if (decimal.isPresent()) {
      return counted(PLAIN.matcher(decimal.get().plain(written)));
    }
    Matcher twoWays = THREE_BEHIND_A_MARK.matcher(written);
    if (twoWays.matches()) {
      boolean dozens = isDozens(twoWays.group(3));
      if (dozens || twoWays.group(2).equals("000")) {
        String few = twoWays.group(1) + (dozens ? "." + twoWays.group(2) + " dozen" : "");
        String many = twoWays.group(1) + twoWays.group(2) + (dozens ? " dozen" : " pieces");
        return not(
            "this may be " + few + " or " + many + "; nothing is assumed for it",
            "write digits without a point or comma, or give 'decimal' for this customer's files");
      }
    }
    return counted(COUNT.matcher(written));
  }

  private static PieceCount counted(Matcher matcher) {
    if (matcher.matches()) {
      long digits = Long.parseLong(matcher.group(1).replaceAll("\\D", ""));
      long count = isDozens(matcher.group(UNIT_GROUP)) ? digits * DOZEN : digits;
      if (count >= 1 && count <= MOST) {
        return new PieceCount(OptionalInt.of((int) count), "", "");
      }
    }
    return not(
        "this is no number of pieces; nothing is assumed for it",
        "count the pieces and write digits");
  }

  private static PieceCount not(String why, String remedy) {
    return new PieceCount(OptionalInt.empty(), why, remedy);
  }

  private static boolean isDozens(@Nullable String unit) {
    return unit != null && unit.toLowerCase(Locale.ROOT).startsWith("d");
  }
}
