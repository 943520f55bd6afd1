package spangle.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import spangle.plan.Brief;

/** Times and numbers as they are spoken in the shop. */
final class Words {
  private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

  private Words() {}

  /**
   * Day and time of a minute: "Tue 09:15", "Tue 09:15 of week 2"; minutes before the week: "-5".
   */
  static String at(long min) {
    if (min < 0) {
      return min + " min";
    }
    long week = min / (7L * Brief.DAY_MIN);
    int day = (int) (min / Brief.DAY_MIN % 7);
    long hour = min % Brief.DAY_MIN / 60;
    String time = DAYS.get(day) + " " + two(hour) + ":" + two(min % 60);
    return week == 0 ? time : time + " of week " + (week + 1);
  }

  /** A number with at most three decimals and no more of them than it needs. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "not a number" : value > 0 ? "infinite" : "minus infinite";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** "1 piece", "2 pieces". */
  static String count(long number, String singular, String plural) {
    return number + " " + (number == 1 ? singular : plural);
  }

  private static String two(long number) {
    return number < 10 ? "0" + number : Long.toString(number);
  }
}
