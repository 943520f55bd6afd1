package spangle.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Shop;
import spangle.intake.week.WeekInput;
import spangle.plan.BathSpec;
import spangle.plan.Brief;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.LotChange;
import spangle.plan.PlacesOut;
import spangle.plan.StationSpec;

/** A week with the weeks after it, for work that finds no room in it. */
final class LaterWeek {
  /** Two weeks are looked at behind a week that has no room. */
  private static final int MORE_DAYS = 14;

  private LaterWeek() {}

  /** The same week with so many days more, if the program can look so far. */
  static PreparedWeek of(WeekInput input) {
    Shop s = input.shop();
    int days = Math.min(Shop.LONGEST_DAYS, s.horizonDays() + MORE_DAYS);
    return BriefMaker.prepare(input.withShop(s.lasting(days)));
  }

  /** The brief, and behind its end the hours of the longer one; lots as given. */
  static Brief behind(Brief brief, Brief longer, List<Lot> lots) {
    Map<String, WorkCalendar> later = new TreeMap<>();
    Map<String, List<PlacesOut>> out = new TreeMap<>();
    for (LineSpec line : longer.lines()) {
      for (StationSpec s : Stream.concat(line.before().stream(), line.after().stream()).toList()) {
        later.put(s.id(), s.calendar());
        out.put(s.id(), s.out());
      }
      line.machines().forEach(m -> later.put(m.id(), m.calendar()));
    }
    int end = brief.horizonMin();
    List<LineSpec> lines = new ArrayList<>();
    for (LineSpec line : brief.lines()) {
      lines.add(
          BriefChange.line(
              line,
              s ->
                  s.during(joined(s.calendar(), later.get(s.id()), end))
                      .having(s.alike(), out.getOrDefault(s.id(), s.out())),
              m -> m.during(joined(m.calendar(), later.get(m.id()), end))));
    }
    int until = Math.max(end, longer.horizonMin());
    return BriefChange.of(brief)
        .horizonMin(until)
        .lines(lines)
        .lots(lots)
        .made()
        .with(baths(brief, longer));
  }

  /** The baths with what is filled up in the weeks behind. */
  private static List<BathSpec> baths(Brief brief, Brief longer) {
    List<BathSpec> baths = new ArrayList<>();
    for (BathSpec bath : brief.baths()) {
      List<BathSpec.Mark> marks = new ArrayList<>(bath.marks());
      longer.baths().stream()
          .filter(later -> later.machineId().equals(bath.machineId()))
          .flatMap(later -> later.marks().stream())
          .filter(mark -> mark.atMin() > brief.horizonMin())
          .forEach(marks::add);
      baths.add(new BathSpec(bath.machineId(), marks, bath.mmPerKg(), bath.needs()));
    }
    return baths;
  }

  /** Up to the end as it is, behind it as in the longer calendar. */
  private static WorkCalendar joined(WorkCalendar now, @Nullable WorkCalendar later, int end) {
    if (later == null) {
      return now;
    }
    List<Span> spans = new ArrayList<>();
    now.open().stream()
        .filter(s -> s.startMin() < end)
        .forEach(s -> spans.add(new Span(s.startMin(), Math.min(s.endMin(), end))));
    for (Span span : later.open()) {
      if (span.endMin() > end) {
        int start = Math.max(end, span.startMin());
        int last = spans.size() - 1;
        if (last >= 0 && spans.get(last).endMin() == start) {
          spans.set(last, new Span(spans.get(last).startMin(), span.endMin()));
        } else {
          spans.add(new Span(start, span.endMin()));
        }
      }
    }
    return new WorkCalendar(spans);
  }

  /** The lot, not touched before that minute. */
  static Lot notBefore(Lot lot, int atMin) {
    if (lot.readyMin() >= atMin) {
      return lot;
    }
    return LotChange.of(lot).ready(atMin).made();
  }

  /** So many working days, Monday to Friday, after a minute: 06:00 of that day. */
  static int workingDaysAfter(LocalDate monday, int atMin, int days) {
    int day = Math.floorDiv(atMin, Shop.DAY_MIN);
    int left = days;
    while (left > 0) {
      day++;
      if (monday.plusDays(day).getDayOfWeek().getValue() <= 5) {
        left--;
      }
    }
    return day * Shop.DAY_MIN + 6 * 60;
  }
}
