package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
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

  OvertimeHours(Shop shop, Brief brief) {
    this.shop = shop;
    this.brief = brief;
  }

  /**
   * Overtime of one date.
   *
   * @param date the date with its hours
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
      Span shorter = new Span(hours().startMin(), minute - date.day() * Shop.DAY_MIN);
      return new Stretch(
          new DayException(
              date.day(), Optional.of(shorter), date.breaks(), date.lines(), date.why()),
          people);
    }
  }

  /** All stretches that begin at that minute or later, up to the Sunday of the plan's last week. */
  List<Stretch> allowed(int fromMin) {
    int weeks = (shop.horizonDays() + WEEK_DAYS - 1) / WEEK_DAYS;
    List<Stretch> all = new ArrayList<>();
    for (int day = 0; day < Math.min(Shop.LONGEST_DAYS, weeks * WEEK_DAYS); day++) {
      for (Overtime each : shop.overtime()) {
        if (each.days().contains(day % WEEK_DAYS)) {
          Stretch stretch =
              new Stretch(
                  new DayException(
                      day, Optional.of(each.hours()), each.breaks(), each.lines(), "overtime"),
                  each.people());
          if (stretch.startMin() >= fromMin && !closed(stretch)) {
            all.add(stretch);
          }
        }
      }
    }
    return all;
  }

  private boolean closed(Stretch stretch) {
    return shop.exceptions().stream()
        .anyMatch(
            e ->
                e.day() == stretch.date().day()
                    && e.hours().isEmpty()
                    && (e.lines().isEmpty() || e.lines().containsAll(stretch.date().lines())));
  }

  /** The same week in which these stretches are worked; what events shut stays shut. */
  Brief worked(List<Stretch> stretches) {
    int end = stretches.stream().mapToInt(Stretch::endMin).reduce(brief.horizonMin(), Math::max);
    int days = Math.min(Shop.LONGEST_DAYS, (end + Shop.DAY_MIN - 1) / Shop.DAY_MIN);
    int horizon = Math.max(brief.horizonMin(), days * Shop.DAY_MIN);
    List<DayException> dates = new ArrayList<>(shop.exceptions());
    stretches.forEach(s -> dates.add(s.date()));
    Map<String, List<Span>> more = more(shop.working(dates, days), stretches);
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
    return BriefChange.made(
        brief, horizon, lines, brief.carriers(), brief.lots(), brief.supplies());
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
      boolean works =
          line.kind() != LineKind.OUTSIDE
              && (stretch.date().lines().isEmpty() || stretch.date().lines().contains(line.id()));
      if (works) {
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
