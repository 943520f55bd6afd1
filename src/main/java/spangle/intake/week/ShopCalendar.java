package spangle.intake.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.equipment.KettleProfile;
import spangle.equipment.Manning;
import spangle.equipment.OvenProfile;
import spangle.equipment.Profile;
import spangle.equipment.Span;
import spangle.equipment.StationProfile;
import spangle.equipment.WorkCalendar;

/** Turns shifts, breaks, overtime, closed dates and maintenance into the calendar of a station. */
public final class ShopCalendar {
  private ShopCalendar() {}

  /** When a station of a line can be used, up to the end of the plan. */
  public static WorkCalendar of(Shop shop, ShopLine line, StationUse station) {
    WorkCalendar calendar = of(shop, line.id(), manning(station.profile()));
    for (Maintenance block : shop.maintenance()) {
      if (block.stationId().equals(station.id()) && !block.leavesSome(station.count())) {
        calendar = calendar.without(block.span());
      }
    }
    return calendar;
  }

  /** When a line is manned, up to the end of the plan. */
  public static WorkCalendar of(Shop shop, String lineId, Manning manning) {
    if (manning == Manning.ALWAYS) {
      return WorkCalendar.always(shop.horizonMin());
    }
    WorkCalendar calendar = WorkCalendar.joining(upTo(shop.horizonMin(), worked(shop, lineId)));
    if (manning == Manning.PEOPLE) {
      for (Span rest : breaks(shop, lineId)) {
        calendar = calendar.without(rest);
      }
    }
    return calendar;
  }

  /** Whether nobody has to be there while something is in a station. */
  public static boolean unmanned(StationUse station) {
    return manning(station.profile()) == Manning.ALWAYS;
  }

  private static Manning manning(Profile profile) {
    if (profile instanceof StationProfile station) {
      return station.manning();
    }
    if (profile instanceof OvenProfile oven) {
      return oven.manning();
    }
    return profile instanceof KettleProfile kettle ? kettle.manning() : Manning.PEOPLE;
  }

  private static List<Span> worked(Shop shop, String lineId) {
    List<Span> spans = new ArrayList<>();
    for (int day = 0; day < shop.horizonDays(); day++) {
      if (!closed(shop, lineId, day)) {
        for (Shift shift : shiftsOn(shop, lineId, day)) {
          spans.add(onDay(shift.hours(), day));
        }
      }
    }
    for (DayException extra : shop.exceptions()) {
      Optional<Span> hours = extra.hours();
      if (hours.isPresent() && concerns(extra.lines(), lineId)) {
        spans.add(onDay(hours.get(), extra.day()));
      }
    }
    return spans;
  }

  private static List<Span> breaks(Shop shop, String lineId) {
    List<Span> spans = new ArrayList<>();
    for (int day = 0; day < shop.horizonDays(); day++) {
      for (Shift shift : shiftsOn(shop, lineId, day)) {
        for (Span rest : shift.breaks()) {
          spans.add(onDay(rest, day));
        }
      }
    }
    for (DayException extra : shop.exceptions()) {
      if (concerns(extra.lines(), lineId)) {
        extra.breaks().forEach(rest -> spans.add(onDay(rest, extra.day())));
      }
    }
    return spans;
  }

  private static List<Shift> shiftsOn(Shop shop, String lineId, int day) {
    return shop.shifts().stream()
        .filter(s -> s.days().contains(day % 7) && concerns(s.lines(), lineId))
        .toList();
  }

  /** Whether a line stands still on a day of the plan, shifts or not. */
  public static boolean closed(Shop shop, String lineId, int day) {
    return shop.exceptions().stream()
        .anyMatch(e -> e.day() == day && e.hours().isEmpty() && concerns(e.lines(), lineId));
  }

  private static boolean concerns(List<String> lines, String lineId) {
    return lines.isEmpty() || lines.contains(lineId);
  }

  private static Span onDay(Span hours, int day) {
    int zero = day * Shop.DAY_MIN;
    return new Span(zero + hours.startMin(), zero + hours.endMin());
  }

  private static List<Span> upTo(int horizonMin, List<Span> spans) {
    return spans.stream()
        .filter(span -> span.startMin() < Math.min(span.endMin(), horizonMin))
        .map(span -> new Span(span.startMin(), Math.min(span.endMin(), horizonMin)))
        .toList();
  }
}
