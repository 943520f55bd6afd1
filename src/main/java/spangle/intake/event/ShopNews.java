package spangle.intake.event;

import java.util.ArrayList;
import java.util.List;
import spangle.equipment.Profile;
import spangle.equipment.Span;
import spangle.equipment.StationProfile;
import spangle.intake.week.Maintenance;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopCalendar;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** What events say of stations: broken, slow, short of people, low. */
final class ShopNews {
  private ShopNews() {}

  static Shop shop(Shop was, List<Event> events, int atMin) {
    List<Maintenance> blocks = new ArrayList<>(was.maintenance());
    blocks.addAll(broken(events));
    List<ShopLine> lines = was.lines().stream().map(l -> line(l, events)).toList();
    Shop now = was.with(blocks, lines);
    for (Event event : events) {
      if (event.kind() == EventKind.ABSENT) {
        blocks.addAll(absent(now, event, atMin));
      }
    }
    return was.with(blocks, lines);
  }

  private static List<Maintenance> broken(List<Event> events) {
    List<Maintenance> blocks = new ArrayList<>();
    for (Event event : events) {
      if (event.kind() != EventKind.BROKEN) {
        continue;
      }
      int end = event.figures().untilMin().orElse(Maintenance.NO_END);
      for (Event later : events) {
        if (later.kind() == EventKind.REPAIRED
            && later.station().equals(event.station())
            && later.atMin() >= event.atMin()) {
          end = Math.min(end, later.atMin());
        }
      }
      if (end > event.atMin()) {
        String why = "broken" + (event.note().isEmpty() ? "" : ": " + event.note());
        blocks.add(
            new Maintenance(
                event.station(),
                new Span(event.atMin(), end),
                why,
                false,
                event.figures().count().orElse(0)));
      }
    }
    return blocks;
  }

  /**
   * One person in {@code factor} is there. Of a station with several places as many stand empty;
   * what is left of one more place works the first part of each stretch, then stands.
   */
  private static List<Maintenance> absent(Shop shop, Event event, int atMin) {
    List<Maintenance> blocks = new ArrayList<>();
    double factor = event.figures().factor().orElse(1);
    int from = Math.max(event.figures().fromMin().orElse(event.atMin()), atMin);
    int until = Math.min(event.figures().untilMin().orElse(from), shop.horizonMin());
    for (ShopLine line : shop.lines()) {
      for (StationUse use : line.stations()) {
        if (!use.id().equals(event.station())) {
          continue;
        }
        double manned = use.count() / factor;
        int whole = (int) Math.floor(manned + 1e-9);
        int empty = use.count() - (int) Math.ceil(manned - 1e-9);
        for (Span open : ShopCalendar.of(shop, line, use).open()) {
          int start = Math.max(open.startMin(), from);
          int end = Math.min(open.endMin(), until);
          int part = start + (int) Math.floor((end - start) * (manned - whole) + 1e-9);
          block(use, start, part, empty, blocks);
          block(use, part, end, use.count() - whole, blocks);
        }
      }
    }
    return blocks;
  }

  private static void block(
      StationUse use, int start, int end, int places, List<Maintenance> into) {
    if (end > start && places > 0) {
      int some = places < use.count() ? places : 0;
      into.add(new Maintenance(use.id(), new Span(start, end), "people absent", false, some));
    }
  }

  private static ShopLine line(ShopLine was, List<Event> events) {
    return new ShopLine(
        was.id(),
        was.name(),
        was.kind(),
        was.settingsC(),
        was.crane(),
        was.stations().stream().map(s -> station(s, events)).toList(),
        was.carriers(),
        was.hauling());
  }

  private static StationUse station(StationUse was, List<Event> events) {
    double level = was.levelDownMm();
    int levelAt = was.levelAtMin();
    double factor = 1;
    for (Event event : events) {
      if (event.station().equals(was.id())) {
        if (event.kind() == EventKind.LEVEL) {
          level = event.figures().levelDownMm().orElse(level);
          levelAt = event.atMin();
        } else if (event.kind() == EventKind.SLOW) {
          factor = event.figures().factor().orElse(factor);
        }
      }
    }
    Profile profile =
        was.profile() instanceof StationProfile p && factor != 1 ? p.slower(factor) : was.profile();
    return new StationUse(
        was.id(),
        profile,
        was.count(),
        was.startsWith(),
        was.startsAtC(),
        level,
        levelAt,
        was.drossMm());
  }
}
