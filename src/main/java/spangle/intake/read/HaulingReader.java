package spangle.intake.read;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Hauling;
import spangle.intake.week.Shop;
import spangle.measure.QuantityKind;
import spangle.plan.LineKind;

/** Reads how work goes to another firm's line: days of collection, lead time, truck, charge. */
final class HaulingReader {
  private static final Range TRUCK_KG = Range.of(10, 60_000);

  private final Times times;
  private final int horizonDays;

  HaulingReader(Times times, int horizonDays) {
    this.times = times;
    this.horizonDays = horizonDays;
  }

  /** Empty for a line of the shop's own. */
  Optional<Hauling> read(Fields line, LineKind kind) {
    if (kind != LineKind.OUTSIDE) {
      return Optional.empty();
    }
    List<Integer> collects = new ArrayList<>();
    for (Datum.Scalar scalar : line.texts("collects", "[,;]")) {
      times.minute("collects", scalar, Times.Edge.START, line.notes()).ifPresent(collects::add);
    }
    if (collects.isEmpty() && !line.has("collects")) {
      line.missing("collects");
    }
    int lead = line.wholeOr("lead_days", 0, 60, 3);
    OptionalInt at = DayClock.minute(line, "returns_at");
    double maxKg = line.quantityNeeded("truck_max", QuantityKind.MASS, TRUCK_KG).orElse(1);
    int places = line.wholeOr("truck_places", 1, 200, 12);
    double charge = line.numberOr("charge_per_kg", Range.of(0, 1_000), 0);
    String firm = line.text("firm");
    List<Hauling.Trip> trips = new ArrayList<>();
    for (int collect : collects) {
      for (int week = 0; collect + week * 7 * Shop.DAY_MIN < horizonDays * Shop.DAY_MIN; week++) {
        int from = collect + week * 7 * Shop.DAY_MIN;
        int back = back(from, lead, at.orElse(0));
        if (back <= from) {
          tooSoon(line);
          return Optional.empty();
        }
        trips.add(new Hauling.Trip(from, back));
      }
    }
    trips.sort(Comparator.comparingInt(Hauling.Trip::collectMin));
    return Optional.of(new Hauling(firm, trips, maxKg, places, charge));
  }

  /** So many working days, Monday to Friday, after the collection, at that time of day. */
  private int back(int collectMin, int leadDays, int atMin) {
    int day = Math.floorDiv(collectMin, Shop.DAY_MIN);
    LocalDate monday = times.weekStart();
    int left = leadDays;
    while (left > 0) {
      day++;
      DayOfWeek weekday = monday.plusDays(day).getDayOfWeek();
      left -= weekday == DayOfWeek.SATURDAY || weekday == DayOfWeek.SUNDAY ? 0 : 1;
    }
    return day * Shop.DAY_MIN + atMin;
  }

  private static void tooSoon(Fields line) {
    line.notes()
        .add(
            ProblemCode.OUT_OF_RANGE,
            line.valuePlace("returns_at"),
            "returns_at",
            line.text("returns_at"),
            "after the collection",
            "the truck would be back before it has gone",
            "give a later time, or lead_days");
  }
}
