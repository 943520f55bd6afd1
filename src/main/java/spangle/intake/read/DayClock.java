package spangle.intake.read;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spangle.equipment.Span;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Shop;

/** Times of day as people write them, and stretches from one to another, in minutes of the day. */
final class DayClock {
  private static final Pattern CLOCK = Pattern.compile("([0-2]?[0-9])[:.h]([0-5][0-9])(?::00)?");
  private static final Pattern HALF_DAY =
      Pattern.compile("(1[0-2]|0?[1-9])(?:[:.]([0-5][0-9]))? ?([ap])\\.?m\\.?");

  private DayClock() {}

  /** Minutes of the day of {@code 07:30}, {@code 7.30}, {@code 24:00}, {@code 2 pm}, noon. */
  static OptionalInt minute(String text) {
    String lower = text.strip().toLowerCase(Locale.ROOT);
    if (lower.equals("noon")) {
      return OptionalInt.of(12 * 60);
    }
    Matcher half = HALF_DAY.matcher(lower);
    if (half.matches()) {
      int hour = Integer.parseInt(half.group(1)) % 12 + (half.group(3).equals("p") ? 12 : 0);
      return OptionalInt.of(
          hour * 60 + (half.group(2) == null ? 0 : Integer.parseInt(half.group(2))));
    }
    Matcher clock = CLOCK.matcher(lower);
    if (!clock.matches()) {
      return OptionalInt.empty();
    }
    int minute = Integer.parseInt(clock.group(1)) * 60 + Integer.parseInt(clock.group(2));
    return minute <= Shop.DAY_MIN ? OptionalInt.of(minute) : OptionalInt.empty();
  }

  /** A time of day that must be there. */
  static OptionalInt minute(Fields fields, String key) {
    Optional<Datum.Scalar> scalar = fields.needed(key);
    if (scalar.isEmpty()) {
      return OptionalInt.empty();
    }
    OptionalInt minute = minute(scalar.get().text());
    if (minute.isEmpty()) {
      notAClock(fields.notes(), key, scalar.get());
    }
    return minute;
  }

  /** {@code from} and {@code to} of a stretch of one day; an end before the start is next day's. */
  static Optional<Span> hours(Fields fields) {
    OptionalInt from = minute(fields, "from");
    OptionalInt to = minute(fields, "to");
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    int end = to.getAsInt() <= from.getAsInt() ? to.getAsInt() + Shop.DAY_MIN : to.getAsInt();
    return Optional.of(new Span(from.getAsInt(), end));
  }

  /**
   * {@code 09:00-09:15}.
   *
   * @param overMidnight whether an end before the start is the next day's; else it is no stretch
   */
  static Optional<Span> stretch(
      String key, Datum.Scalar scalar, boolean overMidnight, Notes notes) {
    String[] ends = scalar.text().split("\\s*(?:-|\u2013| to )\\s*", -1);
    if (ends.length == 2) {
      OptionalInt from = minute(ends[0]);
      OptionalInt to = minute(ends[1]);
      if (from.isPresent() && to.isPresent()) {
        int start = from.getAsInt();
        int end = to.getAsInt() + (overMidnight && to.getAsInt() < start ? Shop.DAY_MIN : 0);
        if (start < end) {
          return Optional.of(new Span(start, end));
        }
      }
    }
    notAClock(notes, key, scalar);
    return Optional.empty();
  }

  private static void notAClock(Notes notes, String key, Datum.Scalar scalar) {
    notes.add(
        ProblemCode.NOT_A_TIME,
        scalar.place(),
        key,
        scalar.text(),
        "00:00 to 24:00",
        "'" + scalar.text() + "' is no time of day",
        "write it like 07:30, a stretch like 09:00-09:15");
  }
}
