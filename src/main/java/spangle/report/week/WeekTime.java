package spangle.report.week;

import java.time.LocalDate;
import java.util.List;
import spangle.measure.Figures;

/**
 * Minutes of the week in words, on the 24-hour clock.
 *
 * @param monday date of minute zero
 */
public record WeekTime(LocalDate monday) {
  /** Minutes of a day. */
  public static final int DAY = 1440;

  private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  /** Day and clock: {@code Tue 06:30}; with the date where it lies outside the planned week. */
  public String at(int minute) {
    int day = dayOf(minute);
    String head = day >= 0 && day < 7 ? DAYS.get(day) : date(monday.plusDays(day));
    return head + " " + clock(minute);
  }

  /** A time by which something is due: midnight belongs to the day it ends, {@code Wed 24:00}. */
  public String due(int minute) {
    return Math.floorMod(minute, DAY) == 0
        ? at(minute - DAY).replace("00:00", "24:00")
        : at(minute);
  }

  /** The clock alone: {@code 06:30}. */
  public String clock(int minute) {
    int inDay = Math.floorMod(minute, DAY);
    return two(inDay / 60) + ":" + two(inDay % 60);
  }

  /** Day of the week a minute lies on, 0 for the first. */
  public static int dayOf(int minute) {
    return Math.floorDiv(minute, DAY);
  }

  /** Weekday and date of a day of the week: {@code Tue 10 Nov}. */
  public String day(int day) {
    return date(monday.plusDays(day));
  }

  /** A date in words: {@code Tue 10 Nov}. */
  public static String date(LocalDate date) {
    return DAYS.get(date.getDayOfWeek().getValue() - 1)
        + " "
        + date.getDayOfMonth()
        + " "
        + MONTHS.get(date.getMonthValue() - 1);
  }

  /** The week in words: {@code Monday 9 Nov 2026}. */
  public String week() {
    return "Monday "
        + monday.getDayOfMonth()
        + " "
        + MONTHS.get(monday.getMonthValue() - 1)
        + " "
        + monday.getYear();
  }

  /** A stretch in words: {@code 45 min}, {@code 3 h 20 min}, {@code 2 days}. */
  public static String stretch(int minutes) {
    if (minutes < 90) {
      return minutes + " min";
    }
    if (minutes < 2 * DAY) {
      int rest = minutes % 60;
      return minutes / 60 + " h" + (rest == 0 ? "" : " " + rest + " min");
    }
    return Figures.upTo(minutes / (double) DAY, 1) + " days";
  }

  private static String two(int value) {
    return value < 10 ? "0" + value : Integer.toString(value);
  }
}
