package spangle.desk;

import java.util.List;
import java.util.Locale;

/** Minutes of the week in words. */
final class DayWords {
  private static final int DAY_MIN = 24 * 60;
  private static final List<String> DAYS =
      List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");

  private DayWords() {}

  /** Such as "Tuesday 14:05"; later weeks are said. */
  static String of(int minute) {
    int day = Math.floorDiv(minute, DAY_MIN);
    int inDay = Math.floorMod(minute, DAY_MIN);
    String later = day >= 7 ? " of week " + (day / 7 + 1) : "";
    return String.format(
        Locale.ROOT,
        "%s%s %02d:%02d",
        DAYS.get(Math.floorMod(day, 7)),
        later,
        inDay / 60,
        inDay % 60);
  }
}
