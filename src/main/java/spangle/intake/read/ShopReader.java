package spangle.intake.read;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.equipment.CraneProfile;
import spangle.equipment.Span;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Clearances;
import spangle.intake.week.ColourChange;
import spangle.intake.week.Defaults;
import spangle.intake.week.Maintenance;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.intake.week.ZincStandard;
import spangle.measure.QuantityKind;
import spangle.plan.LineKind;

/** Reads the shop file. Nothing can be planned in a shop that is half described. */
final class ShopReader {
  private static final Range MM = Range.of(0, 5_000);

  private final Fields fields;
  private final Profiles profiles;

  private ShopReader(Fields fields, Profiles profiles) {
    this.fields = fields;
    this.profiles = profiles;
  }

  /** The Monday of the week, which other files need before the shop is whole. */
  static Optional<LocalDate> weekStart(Fields fields) {
    Optional<Datum.Scalar> scalar = fields.needed("week_start");
    if (scalar.isEmpty()) {
      return Optional.empty();
    }
    Optional<LocalDate> date =
        new Times(LocalDate.of(2026, 1, 5), Times.Order.UNKNOWN)
            .date("week_start", scalar.get(), fields.notes());
    if (date.isPresent() && date.get().getDayOfWeek() != DayOfWeek.MONDAY) {
      LocalDate monday = date.get().minusDays(date.get().getDayOfWeek().getValue() - 1L);
      fields
          .notes()
          .add(
              ProblemCode.OUT_OF_RANGE,
              scalar.get().place(),
              "week_start",
              scalar.get().text(),
              "a Monday",
              "that day is a " + date.get().getDayOfWeek().toString().toLowerCase(Locale.ROOT),
              "write " + monday);
      return Optional.empty();
    }
    return date;
  }

  /** Reads the file; empty when it cannot be used, with the reasons noted. */
  static Optional<Shop> read(Datum.Group group, Profiles profiles, Notes notes) {
    Fields fields = new Fields(group, notes);
    ShopReader reader = new ShopReader(fields, profiles);
    LocalDate monday = weekStart(fields).orElse(LocalDate.of(2026, 1, 5));
    Shop shop = reader.shop(monday);
    fields.finish();
    reader.checkMaintenance(shop);
    return notes.refused() ? Optional.empty() : Optional.of(shop);
  }

  private Shop shop(LocalDate monday) {
    Times times = new Times(monday, Times.Order.YMD);
    List<ShopLine> lines = lines(times);
    HoursReader hours = new HoursReader(fields, lines);
    return new Shop(
        fields.needed("name").map(Datum.Scalar::text).orElse("shop"),
        monday,
        horizonDays(),
        fields
            .word("standard", Fields.words(ZincStandard.values(), ZincStandard::word))
            .orElse(ZincStandard.ISO1461),
        hours.shifts(),
        hours.exceptions(times),
        hours.overtime(),
        maintenance(times),
        lines,
        colourChange(),
        clearances(),
        defaults(),
        gaugeTable());
  }

  private Optional<String> gaugeTable() {
    return fields.word("gauge_table", Gauges.names());
  }

  private int horizonDays() {
    return fields.wholeOr("horizon_days", 1, Shop.LONGEST_DAYS, 7);
  }

  private List<ShopLine> lines(Times times) {
    List<ShopLine> lines = new ArrayList<>();
    HaulingReader hauling = new HaulingReader(times, horizonDays());
    LineReader reader = new LineReader(profiles);
    for (Fields line : fields.groups("lines")) {
      Optional<String> id = line.name("id");
      Optional<LineKind> kind = line.wordNeeded("kind", Fields.words(LineKind.values()));
      Optional<CraneProfile> crane =
          line.has("crane")
              ? profiles.named(line, "crane", CraneProfile.class, "a crane")
              : Optional.empty();
      ShopLine read =
          new ShopLine(
              id.orElse("?"),
              line.text("name").isEmpty() ? id.orElse("?") : line.text("name"),
              kind.orElse(LineKind.OUTSIDE),
              reader.settings(line),
              crane,
              reader.stations(line),
              reader.carriers(line),
              kind.flatMap(k -> hauling.read(line, k)));
      line.finish();
      if (id.isPresent() && kind.isPresent()) {
        reader.checkComplete(line, read);
      }
      lines.add(read);
    }
    if (lines.isEmpty()) {
      fields.missing("lines");
    }
    reader.checkNames(fields, lines);
    return lines;
  }

  private List<Maintenance> maintenance(Times times) {
    List<Maintenance> blocks = new ArrayList<>();
    for (Fields block : fields.groups("maintenance")) {
      Optional<String> station = block.name("station");
      Optional<Span> hours = DayClock.hours(block);
      List<Integer> days = new ArrayList<>();
      Optional<Datum.Scalar> weekday = block.scalar("day");
      if (weekday.isPresent()) {
        OptionalInt day = Times.weekday(weekday.get().text());
        if (day.isEmpty()) {
          block
              .notes()
              .add(
                  ProblemCode.UNKNOWN_WORD,
                  weekday.get().place(),
                  "day",
                  weekday.get().text(),
                  "mon tue wed thu fri sat sun",
                  "'" + weekday.get().text() + "' is no day of the week",
                  "use mon tue wed thu fri sat sun, or give a date");
        } else {
          for (int d = day.getAsInt(); d < horizonDays(); d += 7) {
            days.add(d);
          }
        }
      } else {
        HoursReader.dayOf(block, times).ifPresent(days::add);
      }
      String why = block.text("why");
      boolean topUp = block.told("top_up").yes();
      int places = block.wholeOr("places", 1, 100, 0);
      block.finish();
      if (station.isPresent() && hours.isPresent()) {
        for (int day : days) {
          int zero = day * Shop.DAY_MIN;
          blocks.add(
              new Maintenance(
                  station.get(),
                  new Span(zero + hours.get().startMin(), zero + hours.get().endMin()),
                  why,
                  topUp,
                  places));
        }
      }
    }
    return blocks;
  }

  private void checkMaintenance(Shop shop) {
    List<String> known =
        shop.lines().stream().flatMap(l -> l.stations().stream()).map(StationUse::id).toList();
    for (Fields block : fields.groups("maintenance")) {
      block
          .scalar("station")
          .filter(id -> !known.contains(id.text()))
          .ifPresent(id -> HoursReader.unknown(block, "station", id, "station", known));
    }
  }

  private ColourChange colourChange() {
    Optional<Fields> change = fields.inner("colour_change");
    if (change.isEmpty()) {
      return new ColourChange(List.of(), Map.of(), 0, List.of());
    }
    return ColourChangeReader.read(change.get());
  }

  private Clearances clearances() {
    Clearances usual = Clearances.USUAL;
    Optional<Fields> inner = fields.inner("clearances");
    if (inner.isEmpty()) {
      return usual;
    }
    Fields c = inner.get();
    Clearances read =
        new Clearances(
            c.quantityOr("part_gap", QuantityKind.LENGTH, MM, usual.partGapMm()),
            c.quantityOr("row_gap", QuantityKind.LENGTH, MM, usual.rowGapMm()),
            c.quantityOr("oven_wall", QuantityKind.LENGTH, MM, usual.ovenWallMm()),
            c.quantityOr("door", QuantityKind.LENGTH, MM, usual.doorMm()));
    c.finish();
    return read;
  }

  private Defaults defaults() {
    Defaults built = Defaults.BUILT_IN;
    Optional<Fields> inner = fields.inner("defaults");
    if (inner.isEmpty()) {
      return built;
    }
    Fields d = inner.get();
    Defaults read =
        new Defaults(
            d.numberOr("powder_use", Range.of(0.05, 1), built.powderUse()),
            d.numberOr("zinc_yield", Range.of(0.3, 1), built.zincYield()),
            d.numberOr("heat_up_min_per_mm", Range.of(0.5, 20), built.heatUpMinPerMm()),
            d.wholeOr("wash_to_coat_max_min", 5, 10_000, built.washToCoatMaxMin()),
            d.wholeOr("flux_to_zinc_max_min", 5, 10_000, built.fluxToZincMaxMin()),
            d.wholeOr("zinc_to_powder_max_min", 30, 10_000, built.zincToPowderMaxMin()),
            d.quantityOr(
                "degas_above_cure",
                QuantityKind.TEMPERATURE_DIFFERENCE,
                Range.of(0, 80),
                built.degasAboveCureC()),
            d.wholeOr("degas_min", 5, 1_000, built.degasMin()),
            d.quantityOr("hook_area", QuantityKind.AREA, Range.of(0, 1), built.hookAreaM2()),
            d.wholeOr("shelf_months", 1, 120, built.shelfMonths()),
            d.quantityOr(
                "part_cool", QuantityKind.TEMPERATURE, Range.of(20, 80), built.partCoolC()),
            d.told("start_half_routes").yes(),
            d.numberOr("reject_allowance_pct", WantedReader.REJECTS, built.rejectAllowancePct()));
    d.finish();
    return read;
  }
}
