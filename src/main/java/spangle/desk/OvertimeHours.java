package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import spangle.equipment.Manning;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.intake.week.DayException;
import spangle.intake.week.Overtime;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopCalendar;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.plan.Brief;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;

/** The hours a shop may work besides its shifts, and a brief in which some of them are worked. */
final class OvertimeHours {
  private static final int WEEK_DAYS = 7;

  private final Shop shop;
  private final Brief brief;

  /** The shop with its own shifts and dates, as far as any plan may reach. */
  private final Shop anyway;

  OvertimeHours(Shop shop, Brief brief) {
    this.shop = shop;
    this.brief = brief;
    this.anyway = shop.working(shop.exceptions(), Shop.LONGEST_DAYS);
  }

  /**
   * Overtime of one date.
   *
   * @param date the date with its hours and the lines that work, each by its id
   * @param people how many must stay; 0 where it is not said
   */
  record Stretch(DayException date, int people) {
    int startMin() {
      return date.day() * Shop.DAY_MIN + hours().startMin();
    }

    int endMin() {
      return date.day() * Shop.DAY_MIN + hours().endMin();
    }

    private Span hours() {
      return date.hours().orElseThrow();
    }

    /** The same, over at that minute of the week. */
    Stretch until(int minute) {
      return during(new Span(startMin(), minute), date.lines());
    }

    /** The same in these minutes of the week, with these lines alone. */
    Stretch during(Span span, List<String> lines) {
      int zero = date.day() * Shop.DAY_MIN;
      Span ofDay = new Span(span.startMin() - zero, span.endMin() - zero);
      return new Stretch(
          new DayException(date.day(), Optional.of(ofDay), date.breaks(), lines, date.why()),
          people);
    }
  }

  /**
   * All stretches that begin at that minute or later, up to the Sunday of the plan's last week.
   * What a shift or an extra day has in it already is no overtime and stands in none of them.
   */
  List<Stretch> allowed(int fromMin) {
    int weeks = (shop.horizonDays() + WEEK_DAYS - 1) / WEEK_DAYS;
    List<Stretch> all = new ArrayList<>();
    for (int day = 0; day < Math.min(Shop.LONGEST_DAYS, weeks * WEEK_DAYS); day++) {
      for (Overtime each : shop.overtime()) {
        if (each.days().contains(day % WEEK_DAYS)) {
          Stretch whole =
              new Stretch(
                  new DayException(
                      day, Optional.of(each.hours()), each.breaks(), lines(each, day), "overtime"),
                  each.people());
          besides(whole).stream()
              .filter(s -> s.startMin() >= fromMin && !all.contains(s))
              .forEach(all::add);
        }
      }
    }
    return all;
  }

  /** The shop's own lines that may work then: not another firm's, not those closed that day. */
  private List<String> lines(Overtime overtime, int day) {
    return brief.lines().stream()
        .filter(line -> line.kind() != LineKind.OUTSIDE)
        .map(LineSpec::id)
        .filter(id -> overtime.lines().isEmpty() || overtime.lines().contains(id))
        .filter(id -> !ShopCalendar.closed(shop, id, day))
        .toList();
  }

  /** What of a stretch some of its lines do not work anyway, breaks of a shift included. */
  private List<Stretch> besides(Stretch whole) {
    Map<String, WorkCalendar> free = new LinkedHashMap<>();
    for (String line : whole.date().lines()) {
      WorkCalendar left = new WorkCalendar(List.of(new Span(whole.startMin(), whole.endMin())));
      for (Span worked : ShopCalendar.of(anyway, line, Manning.THROUGH_BREAKS).open()) {
        left = left.without(worked);
      }
      free.put(line, left);
    }
    List<Stretch> besides = new ArrayList<>();
    for (Span span :
        free.values().stream().reduce(new WorkCalendar(List.of()), WorkCalendar::or).open()) {
      List<String> more =
          free.entrySet().stream()
              .filter(e -> e.getValue().open().stream().anyMatch(span::overlaps))
              .map(Map.Entry::getKey)
              .toList();
      besides.add(whole.during(span, more));
    }
    return besides;
  }

  /** Where a plan with these stretches ends: with the day of the last of them, or as before. */
  int horizonMin(List<Stretch> stretches) {
    int end = stretches.stream().mapToInt(Stretch::endMin).reduce(brief.horizonMin(), Math::max);
    return Math.max(brief.horizonMin(), Math.min(Shop.LONGEST_DAYS, daysTo(end)) * Shop.DAY_MIN);
  }

  private static int daysTo(int minute) {
    return (minute + Shop.DAY_MIN - 1) / Shop.DAY_MIN;
  }

  /**
   * The same week in which these stretches are worked; what events shut stays shut.
   *
   * @param horizonMin where its plan ends: what cools with nobody there may lie behind the last of
   *     the stretches
   */
  Brief worked(List<Stretch> stretches, int horizonMin) {
    List<DayException> dates = new ArrayList<>(shop.exceptions());
    stretches.forEach(s -> dates.add(s.date()));
    Map<String, List<Span>> more = more(shop.working(dates, daysTo(horizonMin)), stretches);
    List<LineSpec> lines = new ArrayList<>();
    for (LineSpec line : brief.lines()) {
      lines.add(
          line.kind() == LineKind.OUTSIDE
              ? line
              : BriefChange.line(
                  line,
                  s -> s.during(with(s.calendar(), more.get(s.id()))),
                  m -> m.during(with(m.calendar(), more.get(m.id())))));
    }
    return BriefChange.of(brief).horizonMin(horizonMin).lines(lines).made();
  }

  /** By station: what is open in these stretches, and where nobody need be there, from then on. */
  private Map<String, List<Span>> more(Shop longer, List<Stretch> stretches) {
    Map<String, List<Span>> more = new HashMap<>();
    for (ShopLine line : longer.lines()) {
      for (StationUse use : line.stations()) {
        List<Span> spans = new ArrayList<>();
        for (Span open : ShopCalendar.of(longer, line, use).open()) {
          for (Stretch stretch : stretches) {
            add(spans, open, stretch.startMin(), stretch.endMin());
          }
          if (ShopCalendar.unmanned(use)) {
            add(spans, open, brief.horizonMin(), Integer.MAX_VALUE);
          }
        }
        more.put(use.id(), spans);
      }
    }
    return more;
  }

  /** Stations and machines that are open longer for a stretch. */
  Set<String> opened(Stretch stretch) {
    Set<String> opened = new HashSet<>();
    for (LineSpec line : brief.lines()) {
      if (stretch.date().lines().contains(line.id())) {
        line.before().forEach(s -> opened.add(s.id()));
        line.machines().forEach(m -> opened.add(m.id()));
        line.after().forEach(s -> opened.add(s.id()));
      }
    }
    for (ShopLine line : shop.lines()) {
      line.stations().stream()
          .filter(ShopCalendar::unmanned)
          .forEach(use -> opened.remove(use.id()));
    }
    return opened;
  }

  private static WorkCalendar with(WorkCalendar was, @Nullable List<Span> more) {
    if (more == null || more.isEmpty()) {
      return was;
    }
    List<Span> spans = new ArrayList<>(was.open());
    spans.addAll(more);
    return WorkCalendar.joining(spans);
  }

  private static void add(List<Span> spans, Span open, int fromMin, int toMin) {
    int start = Math.max(open.startMin(), fromMin);
    int end = Math.min(open.endMin(), toMin);
    if (start < end) {
      spans.add(new Span(start, end));
    }
  }
}
