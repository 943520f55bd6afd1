package spangle.intake.read;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Shop;

/**
 * Dates and times as people write them, into minutes from the week's zero. A date that may be read
 * two ways is refused, never guessed.
 */
final class Times {
  /** Order of day and month in dates written with slashes. */
  enum Order {
    /** Nobody has said. */
    UNKNOWN,
    /** Day, month, year. */
    DMY,
    /** Month, day, year. */
    MDY,
    /** Year, month, day. */
    YMD
  }

  /** Which end of a day a bare date means. */
  enum Edge {
    /** 00:00, for what comes in. */
    START,
    /** 24:00, for what must be done. */
    END
  }

  private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
  private static final String DAY_NAME =
      "(mon|tue|wed|thu|fri|sat|sun)(?:day|s|sday|nesday|r|rs|rsday|urday)?";
  private static final Pattern DAY = Pattern.compile(DAY_NAME + "\\.?(?:[ ,]+(.+))?");
  private static final Pattern DAY_ALONE = Pattern.compile(DAY_NAME + "s?\\.?");
  private static final Pattern ISO =
      Pattern.compile("([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})(?:[ t]+(\\S.*))?");
  private static final Pattern DOTTED =
      Pattern.compile("([0-9]{1,2})\\.([0-9]{1,2})\\.([0-9]{4}|[0-9]{2})(?:[ ,]+(\\S.*))?");
  private static final Pattern SLASHED =
      Pattern.compile("([0-9]{1,4})/([0-9]{1,2})/([0-9]{1,4})(?:[ ,]+(\\S.*))?");
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
  private static final String MONTH =
      "(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)(?:uary|ruary|ch|il|e|y|ust|t|tember|ober|ember)?\\.?";
  private static final String OF_MONTH = "([0-9]{1,2})(?:st|nd|rd|th)?\\.?";
  private static final String WEEKDAY = "(?:" + DAY_NAME + "\\.?,? )?";
  private static final String YEAR_CLOCK = "(?:[ ,-]+([0-9]{4}|[0-9]{2}))?(?:[ ,]+([^ ].*))?";
  private static final Pattern DAY_MONTH =
      Pattern.compile(WEEKDAY + OF_MONTH + "[ -]*" + MONTH + YEAR_CLOCK);
  private static final Pattern MONTH_DAY =
      Pattern.compile(WEEKDAY + MONTH + "[ -]*" + OF_MONTH + YEAR_CLOCK);
  private static final Pattern DIGITS = Pattern.compile("(20[0-9]{2})([01][0-9])([0-3][0-9])");
  private static final Pattern SERIAL = Pattern.compile("([345][0-9]{4})(?:[.,]([0-9]{1,12}))?");

  /** Day 0 of spreadsheet serial dates after February 1900 (the 1900 date system). */
  private static final LocalDate SERIAL_ZERO = LocalDate.of(1899, 12, 30);

  private final LocalDate weekStart;
  private final Order order;

  Times(LocalDate weekStart, Order order) {
    this.weekStart = weekStart;
    this.order = order;
  }

  Times with(Order other) {
    return new Times(weekStart, other);
  }

  LocalDate weekStart() {
    return weekStart;
  }

  /** Minutes from the week's zero; notes a problem and gives nothing when it cannot be read. */
  OptionalInt minute(String key, Datum.Scalar scalar, Edge edge, Notes notes) {
    try {
      Optional<Reading> reading = read(scalar.text());
      if (reading.isPresent()) {
        return minute(key, scalar, reading.get(), edge, notes);
      }
    } catch (DateTimeException impossible) {
      notes.add(
          ProblemCode.NOT_A_TIME,
          scalar.place(),
          key,
          scalar.text(),
          "",
          "there is no such date or time",
          "write it like " + weekStart + " 07:00 or mon 07:00");
      return OptionalInt.empty();
    }
    boolean due = key.equals("due");
    notes.add(
        due ? ProblemCode.DUE_NOT_A_DATE : ProblemCode.NOT_A_TIME,
        scalar.place(),
        key,
        scalar.text(),
        "a date, or a day of the week",
        due
            ? "'" + scalar.text() + "' is no date; the words are kept, urgency is not a due date"
            : "'" + scalar.text() + "' is no date or time",
        "write it like " + weekStart + " 07:00 or mon 07:00");
    return OptionalInt.empty();
  }

  private OptionalInt minute(
      String key, Datum.Scalar scalar, Reading reading, Edge edge, Notes notes) {
    if (reading.twoWays()) {
      notes.add(
          ProblemCode.DATE_TWO_WAYS,
          scalar.place(),
          key,
          scalar.text(),
          "",
          "it may be either of two days: "
              + reading.date()
              + " or "
              + reading.other().orElse(reading.date()),
          "write it like "
              + weekStart
              + (scalar.text().contains("/")
                  ? ", or teach it in columns.yaml: files: \""
                      + name(scalar.place().file())
                      + "\", dates: dmy or mdy"
                  : ""));
      return OptionalInt.empty();
    }
    long days = ChronoUnit.DAYS.between(weekStart, reading.date());
    if (Math.abs(days) > 3660) {
      notes.add(
          ProblemCode.NOT_A_TIME,
          scalar.place(),
          key,
          scalar.text(),
          "within ten years of the week",
          "the date is more than ten years from the planned week",
          "check the year");
      return OptionalInt.empty();
    }
    int ofDay = reading.minuteOfDay().orElse(edge == Edge.START ? 0 : Shop.DAY_MIN);
    return OptionalInt.of((int) days * Shop.DAY_MIN + ofDay);
  }

  private static String name(String file) {
    return file.substring(file.lastIndexOf('/') + 1);
  }

  /** A date alone. */
  Optional<LocalDate> date(String key, Datum.Scalar scalar, Notes notes) {
    OptionalInt minute = minute(key, scalar, Edge.START, notes);
    return minute.isEmpty()
        ? Optional.empty()
        : Optional.of(weekStart.plusDays(Math.floorDiv(minute.getAsInt(), Shop.DAY_MIN)));
  }

  private record Reading(LocalDate date, OptionalInt minuteOfDay, Optional<LocalDate> other) {
    boolean twoWays() {
      return other.isPresent() && !other.get().equals(date);
    }

    /** With the day of the week that stands before it; where they disagree it is two days. */
    Reading on(@Nullable String weekday) {
      if (weekday == null) {
        return this;
      }
      int off = DAYS.indexOf(weekday) + 1 - date.getDayOfWeek().getValue();
      // The nearest such day: from Monday to Sunday it is one day back, not six on.
      int nearest = Math.floorMod(off + 3, 7) - 3;
      return new Reading(date, minuteOfDay, Optional.of(date.plusDays(nearest)));
    }
  }

  private Optional<Reading> read(String text) {
    String lower = text.toLowerCase(Locale.ROOT).strip();
    if (lower.length() > 40) {
      return Optional.empty();
    }
    Matcher dayMonth = DAY_MONTH.matcher(lower);
    if (dayMonth.matches()) {
      return named(dayMonth.group(2), dayMonth.group(3), dayMonth.group(4), dayMonth.group(5))
          .map(reading -> reading.on(dayMonth.group(1)));
    }
    Matcher monthDay = MONTH_DAY.matcher(lower);
    if (monthDay.matches()) {
      return named(monthDay.group(3), monthDay.group(2), monthDay.group(4), monthDay.group(5))
          .map(reading -> reading.on(monthDay.group(1)));
    }
    Matcher day = DAY.matcher(lower);
    if (day.matches()) {
      return at(weekStart.plusDays(DAYS.indexOf(day.group(1))), day.group(2), Optional.empty());
    }
    Matcher iso = ISO.matcher(lower);
    if (iso.matches()) {
      return at(date(iso.group(1), iso.group(2), iso.group(3)), iso.group(4), Optional.empty());
    }
    Matcher dotted = DOTTED.matcher(lower);
    if (dotted.matches()) {
      LocalDate date = date(year(dotted.group(3)), dotted.group(2), dotted.group(1));
      return at(date, dotted.group(4), Optional.empty());
    }
    Matcher slashed = SLASHED.matcher(lower);
    if (slashed.matches()) {
      return slashed(slashed);
    }
    Matcher digits = DIGITS.matcher(lower);
    if (digits.matches()) {
      LocalDate date = date(digits.group(1), digits.group(2), digits.group(3));
      return at(date, null, Optional.empty());
    }
    Matcher serial = SERIAL.matcher(lower);
    return serial.matches() ? Optional.of(serial(serial)) : Optional.empty();
  }

  /** A month by its name; without a year the day that lies nearest to the week. */
  private Optional<Reading> named(
      String day, String month, @Nullable String year, @Nullable String clock) {
    int number = MONTHS.indexOf(month) + 1;
    if (year != null) {
      return at(date(year(year), Integer.toString(number), day), clock, Optional.empty());
    }
    LocalDate nearest = null;
    for (int y = weekStart.getYear() - 1; y <= weekStart.getYear() + 1; y++) {
      boolean leapDay = number == 2 && Integer.parseInt(day) == 29;
      if (leapDay && !Year.isLeap(y)) {
        continue;
      }
      LocalDate date = date(Integer.toString(y), Integer.toString(number), day);
      if (nearest == null
          || Math.abs(ChronoUnit.DAYS.between(weekStart, date))
              < Math.abs(ChronoUnit.DAYS.between(weekStart, nearest))) {
        nearest = date;
      }
    }
    if (nearest == null) {
      throw new DateTimeException("no leap day near the week");
    }
    return at(nearest, clock, Optional.empty());
  }

  private Reading serial(Matcher serial) {
    LocalDate date = SERIAL_ZERO.plusDays(Long.parseLong(serial.group(1)));
    if (serial.group(2) == null) {
      return new Reading(date, OptionalInt.empty(), Optional.empty());
    }
    double fraction = Double.parseDouble("0." + serial.group(2));
    int minute = (int) Math.round(fraction * Shop.DAY_MIN);
    return new Reading(
        date, minute == 0 ? OptionalInt.empty() : OptionalInt.of(minute), Optional.empty());
  }

  private Optional<Reading> slashed(Matcher m) {
    if (m.group(1).length() == 4) {
      return at(date(m.group(1), m.group(2), m.group(3)), m.group(4), Optional.empty());
    }
    if (m.group(1).length() > 2 || m.group(3).length() == 3 || m.group(3).length() == 1) {
      return Optional.empty();
    }
    String year = year(m.group(3));
    int first = Integer.parseInt(m.group(1));
    int second = Integer.parseInt(m.group(2));
    boolean dayFirst = order == Order.DMY || (order == Order.UNKNOWN && first > 12);
    boolean monthFirst = order == Order.MDY || (order == Order.UNKNOWN && second > 12);
    if (dayFirst) {
      return at(date(year, m.group(2), m.group(1)), m.group(4), Optional.empty());
    }
    LocalDate american = date(year, m.group(1), m.group(2));
    return monthFirst
        ? at(american, m.group(4), Optional.empty())
        : at(american, m.group(4), Optional.of(date(year, m.group(2), m.group(1))));
  }

  private static String year(String digits) {
    return digits.length() == 2 ? "20" + digits : digits;
  }

  private static LocalDate date(String year, String month, String day) {
    return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
  }

  private static Optional<Reading> at(
      LocalDate date, @Nullable String clock, Optional<LocalDate> other) {
    // Programs print a day without an hour so; people do not write seconds.
    if (clock == null || clock.equals("00:00:00")) {
      return Optional.of(new Reading(date, OptionalInt.empty(), other));
    }
    OptionalInt minute = DayClock.minute(clock);
    return minute.isEmpty() ? Optional.empty() : Optional.of(new Reading(date, minute, other));
  }

  /** 0 = Monday, of a name alone: {@code fri}, {@code Friday}, {@code Fridays}. */
  static OptionalInt weekday(String text) {
    Matcher day = DAY_ALONE.matcher(text.toLowerCase(Locale.ROOT).strip());
    return day.matches() ? OptionalInt.of(DAYS.indexOf(day.group(1))) : OptionalInt.empty();
  }
}
