package spangle.intake.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spangle.equipment.KettleProfile;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.intake.week.Hauling;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopLine;
import spangle.plan.Dwell;
import spangle.plan.MachineSpec;
import spangle.plan.Setting;
import spangle.plan.SetupTable;

/**
 * A truck's trips as the clock knows machines: each trip is a machine that is open from collection
 * to return and nothing else, at a setting of its own whose only dwell is the trip. Pallets are its
 * carriers, its places and mass limit are the truck's.
 */
final class Trips {
  /** No load changes from one trip to another: longer than any plan. */
  private static final int NEVER_MIN = 100_000;

  private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

  private Trips() {}

  static String id(ShopLine line, int trip) {
    return line.id() + "-trip-" + (trip + 1);
  }

  static List<String> ids(ShopLine line, Hauling hauling) {
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < hauling.trips().size(); i++) {
      ids.add(id(line, i));
    }
    return ids;
  }

  static List<MachineSpec> machines(ShopLine line, Hauling hauling) {
    List<MachineSpec> machines = new ArrayList<>();
    for (int i = 0; i < hauling.trips().size(); i++) {
      Hauling.Trip trip = hauling.trips().get(i);
      machines.add(
          new MachineSpec(
              id(line, i),
              "Truck " + when(trip.collectMin()) + ", back " + when(trip.returnMin()),
              hauling.places(),
              hauling.maxKg(),
              new WorkCalendar(List.of(new Span(trip.collectMin(), trip.returnMin()))),
              i,
              0,
              0));
    }
    return machines;
  }

  static List<Setting> settings(ShopLine line, Hauling hauling) {
    double bathC =
        LineMaker.kettles(line).stream().mapToDouble(KettleProfile::bathC).findFirst().orElse(450);
    List<Setting> settings = new ArrayList<>();
    for (Hauling.Trip trip : hauling.trips()) {
      settings.add(new Setting(settings.size(), "trip " + when(trip.collectMin()), bathC));
    }
    return settings;
  }

  static SetupTable change(List<Setting> settings) {
    List<List<Integer>> minutes = new ArrayList<>();
    for (Setting from : settings) {
      minutes.add(settings.stream().map(to -> from.index() == to.index() ? 0 : NEVER_MIN).toList());
    }
    return new SetupTable(settings.stream().map(Setting::name).toList(), minutes, minutes);
  }

  static List<Dwell> dwells(Hauling hauling) {
    List<Dwell> dwells = new ArrayList<>();
    for (Hauling.Trip trip : hauling.trips()) {
      int minutes = trip.returnMin() - trip.collectMin();
      dwells.add(new Dwell(dwells.size(), minutes, minutes));
    }
    return dwells;
  }

  private static String when(int minute) {
    int day = minute / Shop.DAY_MIN;
    int ofDay = minute % Shop.DAY_MIN;
    String week = day >= 7 ? " of week " + (day / 7 + 1) : "";
    return String.format(
        Locale.ROOT, "%s%s %02d:%02d", DAYS.get(day % 7), week, ofDay / 60, ofDay % 60);
  }
}
