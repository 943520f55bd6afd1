package spangle.intake.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import spangle.equipment.Span;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.DayException;
import spangle.intake.week.Overtime;
import spangle.intake.week.Shift;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopLine;

/** Reads when a shop works: shifts, extra and closed days, and the overtime it may work. */
final class HoursReader {
  private static final int MOST_PEOPLE = 200;

  private final Fields fields;
  private final List<ShopLine> lines;

  /**
   * A reader.
   *
   * @param fields the shop file
   * @param lines the lines it has
   */
  HoursReader(Fields fields, List<ShopLine> lines) {
    this.fields = fields;
    this.lines = lines;
  }

  List<Shift> shifts() {
    List<Shift> shifts = new ArrayList<>();
    for (Fields shift : fields.groups("shifts")) {
      Set<Integer> days = days(shift);
      Optional<Span> hours = DayClock.hours(shift);
      List<Span> breaks = breaks(shift, hours);
      List<String> which = linesNamed(shift);
      shift.finish();
      hours.ifPresent(span -> shifts.add(new Shift(days, span, breaks, which)));
    }
    if (shifts.isEmpty() && fields.items("shifts").isEmpty()) {
      fields.missing("shifts");
    }
    return shifts;
  }

  /** Hours that may be worked besides; none unless the file says so. */
  List<Overtime> overtime() {
    List<Overtime> allowed = new ArrayList<>();
    for (Fields each : fields.groups("overtime")) {
      Set<Integer> days = days(each);
      Optional<Span> hours = someHours(each);
      List<Span> breaks = breaks(each, hours);
      List<String> which = linesNamed(each);
      int people = each.wholeOr("people", 1, MOST_PEOPLE, 0);
      each.finish();
      hours.ifPresent(span -> allowed.add(new Overtime(days, span, breaks, which, people)));
    }
    return allowed;
  }

  private static Set<Integer> days(Fields owner) {
    Set<Integer> days = new TreeSet<>();
    for (Datum.Scalar day : owner.texts("days", "[,;]")) {
      OptionalInt weekday = Times.weekday(day.text());
      if (weekday.isPresent()) {
        days.add(weekday.getAsInt());
      } else {
        owner
            .notes()
            .add(
                ProblemCode.UNKNOWN_WORD,
                day.place(),
                "days",
                day.text(),
                "mon tue wed thu fri sat sun",
                "'" + day.text() + "' is no day of the week",
                "use mon tue wed thu fri sat sun");
      }
    }
    if (days.isEmpty()) {
      owner.missing("days");
    }
    return days;
  }

  /** A shift may go round the clock; overtime that ends when it begins is none. */
  private static Optional<Span> someHours(Fields owner) {
    Optional<Span> hours = DayClock.hours(owner);
    boolean some =
        hours.filter(h -> h.startMin() > 0 && h.endMin() == h.startMin() + Shop.DAY_MIN).isEmpty();
    Optional<Datum.Scalar> end = some ? Optional.empty() : owner.scalar("to");
    if (end.isEmpty()) {
      return hours;
    }
    owner
        .notes()
        .add(
            ProblemCode.OUT_OF_RANGE,
            end.get().place(),
            "to",
            end.get().text(),
            "another time than 'from'",
            "the overtime ends when it begins, at " + end.get().text(),
            "say until when it goes");
    return Optional.empty();
  }

  /** A break of a night shift that is written with a time before its begin is after midnight. */
  private static List<Span> breaks(Fields owner, Optional<Span> hours) {
    List<Span> breaks = new ArrayList<>();
    int begin = hours.filter(h -> h.endMin() > Shop.DAY_MIN).map(Span::startMin).orElse(0);
    for (Datum.Scalar rest : owner.texts("breaks", "[,;]")) {
      DayClock.stretch("breaks", rest, begin > 0, owner.notes())
          .map(
              s ->
                  s.startMin() < begin
                      ? new Span(s.startMin() + Shop.DAY_MIN, s.endMin() + Shop.DAY_MIN)
                      : s)
          .ifPresent(breaks::add);
    }
    return breaks;
  }

  private List<String> linesNamed(Fields owner) {
    List<String> known = lines.stream().map(ShopLine::id).toList();
    List<String> named = new ArrayList<>();
    for (Datum.Scalar id : owner.texts("lines", "[,;]")) {
      if (known.contains(id.text())) {
        named.add(id.text());
      } else {
        unknown(owner, "lines", id, "line", known);
      }
    }
    return named;
  }

  static void unknown(Fields owner, String key, Datum.Scalar id, String what, List<String> known) {
    owner
        .notes()
        .add(
            ProblemCode.UNKNOWN_NAME,
            id.place(),
            key,
            id.text(),
            String.join(", ", known),
            "there is no " + what + " '" + id.text() + "'" + Near.hint(id.text(), known),
            "use the id of a " + what + " of this shop");
  }

  List<DayException> exceptions(Times times) {
    List<DayException> days = new ArrayList<>();
    for (Fields extra : fields.groups("extra_days")) {
      OptionalInt day = dayOf(extra, times);
      Optional<Span> hours = DayClock.hours(extra);
      List<Span> breaks = breaks(extra, hours);
      List<String> which = linesNamed(extra);
      String why = extra.text("why");
      extra.finish();
      if (day.isPresent() && hours.isPresent()) {
        days.add(new DayException(day.getAsInt(), hours, breaks, which, why));
      }
    }
    for (Fields closed : fields.groups("closed_days")) {
      OptionalInt day = dayOf(closed, times);
      List<String> which = linesNamed(closed);
      String why = closed.text("why");
      closed.finish();
      day.ifPresent(d -> days.add(new DayException(d, Optional.empty(), List.of(), which, why)));
    }
    return days;
  }

  static OptionalInt dayOf(Fields owner, Times times) {
    Optional<Datum.Scalar> date = owner.needed("date");
    if (date.isEmpty()) {
      return OptionalInt.empty();
    }
    OptionalInt minute = times.minute("date", date.get(), Times.Edge.START, owner.notes());
    return minute.isEmpty()
        ? minute
        : OptionalInt.of(Math.floorDiv(minute.getAsInt(), Shop.DAY_MIN));
  }
}
