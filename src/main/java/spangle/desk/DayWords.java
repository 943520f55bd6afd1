package spangle.desk;

import java.util.List;
import java.util.Locale;
import spangle.intake.week.Shop;

/** Minutes of the week in words. */
final class DayWords {
  private static final List<String> DAYS =
      List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");

  private DayWords() {}

  /** Such as "Tuesday 14:05"; later weeks are said. */
  static String of(int minute) {
    int day = Math.floorDiv(minute, Shop.DAY_MIN);
    int inDay = Math.floorMod(minute, Shop.DAY_MIN);
    String later = day >= 7 ? " of week " + (day / 7 + 1) : "";
    return String.format(
        Locale.ROOT,
        "%s%s %02d:%02d",
        DAYS.get(Math.floorMod(day, 7)),
        later,
        inDay / 60,
        inDay % 60);
  }

  /** A time by which something is due: midnight belongs to the day it ends, "Tuesday 24:00". */
  static String due(int minute) {
    return Math.floorMod(minute, Shop.DAY_MIN) == 0
        ? of(minute - Shop.DAY_MIN).replace("00:00", "24:00")
        : of(minute);
  }

  /** A length of time such as "45 min", "3 h" or "2 h 10 min"; days count 24 hours. */
  static String length(int minutes) {
    int days = minutes / Shop.DAY_MIN;
    int hours = minutes % Shop.DAY_MIN / 60;
    int rest = minutes % 60;
    StringBuilder words = new StringBuilder();
    if (days > 0) {
      words.append(days).append(days == 1 ? " day" : " days");
    }
    if (hours > 0) {
      words.append(words.isEmpty() ? "" : " ").append(hours).append(" h");
    }
    if (rest > 0 && days == 0) {
      words.append(words.isEmpty() ? "" : " ").append(rest).append(" min");
    }
    return words.isEmpty() ? "0 min" : words.toString();
  }

  /** Hours of work such as "4 h" or "12.5 h"; never days, which have fewer of them. */
  static String hours(int minutes) {
    double hours = Math.round(minutes / 6.0) / 10.0;
    return String.format(Locale.ROOT, hours == Math.rint(hours) ? "%.0f h" : "%.1f h", hours);
  }
}
