package spangle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Dwell;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.Goals;
import spangle.plan.Kit;
import spangle.plan.LeftOut;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.Plan;
import spangle.plan.PlanFigures;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.Setting;
import spangle.plan.SetupTable;
import spangle.plan.SolveNote;
import spangle.plan.StationSpec;

/** An invented harbour workshop whose loads are put on the calendar one after the other. */
final class Workshop {
  static final LocalDate MONDAY = LocalDate.of(2026, 11, 9);
  static final int DAY = 1440;

  private static final List<String> PAINT_STOPS = List.of("hang", "wash", "dry-off", "booth");
  private static final List<Integer> PAINT_MINUTES = List.of(20, 15, 20, 18);
  private static final List<String> ZINC_STOPS =
      List.of("beam", "degrease", "rinse", "pickle", "flux", "dryer");
  private static final List<Integer> ZINC_MINUTES = List.of(25, 15, 4, 60, 5, 20);

  final List<Lot> lots = new ArrayList<>();
  final List<Kit> kits = new ArrayList<>();
  final List<PlannedBatch> batches = new ArrayList<>();
  final List<LeftOut> leftOut = new ArrayList<>();
  final List<String> colours;
  private final Map<String, Integer> free = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new HashMap<>();
  private String boothColour = "";

  Workshop(List<String> colours) {
    this.colours = List.copyOf(colours);
  }

  static int at(int day, int hour, int minute) {
    return day * DAY + hour * 60 + minute;
  }

  static WorkCalendar shifts() {
    List<Span> spans = new ArrayList<>();
    for (int day = 0; day < 5; day++) {
      spans.add(new Span(at(day, 6, 0), at(day, 9, 30)));
      spans.add(new Span(at(day, 9, 45), at(day, 12, 30)));
      spans.add(new Span(at(day, 13, 0), at(day, 16, 30)));
    }
    return new WorkCalendar(spans);
  }

  static CarrierSpec rack() {
    return new CarrierSpec(
        "rack",
        "long rack",
        "paint",
        new CarrierFace(2400, 1500, 400, 2, 40, 60, 80, 0, 350, 160, CarrierFace.Style.ROWS),
        6,
        1,
        48,
        10,
        240);
  }

  static CarrierSpec beam() {
    return new CarrierSpec(
        "beam",
        "six-metre beam",
        "kettle",
        new CarrierFace(5600, 1300, 900, 1, 80, 80, 150, 0, 2000, 80, CarrierFace.Style.ROWS),
        3,
        1,
        120,
        0,
        0);
  }

  static CarrierSpec basket() {
    return new CarrierSpec(
        "basket",
        "spin basket",
        "kettle",
        new CarrierFace(500, 500, 500, 1, 0, 0, 0, 0, 60, 0, CarrierFace.Style.BULK),
        4,
        1,
        14,
        0,
        0);
  }

  private static StationSpec station(String id, String name, int alike, SetupTable setups) {
    return new StationSpec(id, name, alike, shifts(), setups, 0, Integer.MAX_VALUE);
  }

  private static MachineSpec machine(String id, String name, WorkCalendar calendar) {
    return new MachineSpec(id, name, 4, 1500, calendar, 0, 5, 0);
  }

  List<LineSpec> lines() {
    SetupTable none = SetupTable.none(List.of("any"));
    List<Setting> settings = List.of(new Setting(0, "190 °C", 190), new Setting(1, "200 °C", 200));
    LineSpec paint =
        new LineSpec(
            "paint",
            "Paint line",
            LineKind.POWDER,
            List.of(
                station("hang", "hanging", 2, none),
                station("wash", "wash", 1, none),
                station("dry-off", "dry-off", 1, none),
                station("booth", "booth", 1, SetupTable.none(colours))),
            List.of(machine("oven-1", "oven 1", shifts()), machine("oven-2", "oven 2", shifts())),
            List.of(station("unload", "cool and unload", 2, none)),
            settings,
            SetupTable.none(List.of("190 °C", "200 °C")));
    LineSpec kettle =
        new LineSpec(
            "kettle",
            "Kettle line",
            LineKind.ZINC,
            List.of(
                station("beam", "beam hanging", 1, none),
                station("degrease", "degrease", 1, none),
                station("rinse", "rinse", 1, none),
                station("pickle", "pickle", 2, none),
                station("flux", "flux", 1, none),
                station("dryer", "dryer", 1, none)),
            List.of(machine("kettle", "kettle", shifts())),
            List.of(station("cool", "air cooling", 2, none)),
            List.of(new Setting(0, "450 °C", 450)),
            SetupTable.none(List.of("450 °C")));
    return List.of(paint, kettle);
  }

  Finish powder(int colour) {
    return new Finish(
        colour, "powder:" + colour, colours.get(colour), FinishKind.POWDER, "powder-" + colour);
  }

  static Finish zinc(String name) {
    return new Finish(0, "zinc:" + name, "galvanized, " + name, FinishKind.ZINC, "zinc");
  }

  /** Adds a lot; the item's sides are millimetres as hung. */
  Lot lot(
      String id,
      String job,
      String part,
      int pieces,
      Finish finish,
      double across,
      double drop,
      double massKg,
      int ready,
      int due,
      String... kitIds) {
    boolean zinc = finish.kind() == FinishKind.ZINC;
    Lot lot =
        new Lot(
            id,
            job,
            part.replace(' ', '-'),
            part,
            pieces,
            0,
            Optional.empty(),
            zinc ? "kettle" : "paint",
            finish,
            false,
            finish.kind().name(),
            ready,
            due,
            1,
            true,
            List.of(new Dwell(0, 20, 40)),
            List.of(),
            List.of(zinc ? "beam" : "rack"),
            new HangItem(
                id,
                pieces,
                across,
                drop,
                60,
                massKg,
                finish.name().contains("spun") ? 0 : 1,
                false),
            List.of(),
            pieces * 2 * across * drop / 1e6,
            pieces * massKg,
            zinc ? pieces * massKg * 0.05 : pieces * 2 * across * drop / 1e6 * 0.2,
            List.of(kitIds));
    lots.add(lot);
    return lot;
  }

  /** Puts a batch on the calendar: each group of lots is one load. */
  PlannedBatch batch(String machineId, int setting, int fromMin, int dwell, List<List<Lot>> loads) {
    boolean zinc = machineId.equals("kettle");
    List<PlannedLoad> planned = new ArrayList<>();
    int ready = fromMin;
    for (List<Lot> group : loads) {
      List<PlannedVisit> visits =
          zinc
              ? visits(ZINC_STOPS, ZINC_MINUTES, fromMin, group)
              : visits(PAINT_STOPS, PAINT_MINUTES, fromMin, group);
      ready = Math.max(ready, visits.get(visits.size() - 1).endMin());
      String prefix = zinc ? "Z" : "P";
      int number = numbers.merge(prefix, 1, Integer::sum);
      boolean loose = group.get(0).finish().name().contains("spun");
      planned.add(
          new PlannedLoad(
              prefix + (number < 10 ? "0" : "") + number,
              zinc ? (loose ? "basket" : "beam") : "rack",
              (number - 1) % (zinc ? 3 : 6) + 1,
              group.stream().map(Lot::id).toList(),
              visits,
              loose ? Optional.empty() : Optional.of(grid(zinc ? beam() : rack(), group))));
    }
    int setup = setting == 1 ? 10 : 0;
    int start = inShift(Math.max(ready, free.getOrDefault(machineId, 0)) + setup, dwell);
    free.put(machineId, start + dwell + 5);
    List<PlannedLoad> done = new ArrayList<>();
    for (PlannedLoad load : planned) {
      String after = zinc ? "cool" : "unload";
      int place = done.size() % 2 + 1;
      int cool = inShift(Math.max(start + dwell, free.getOrDefault(after + place, 0)), 25);
      free.put(after + place, cool + 25);
      List<PlannedVisit> visits = new ArrayList<>(load.visits());
      visits.add(new PlannedVisit(after, place, cool, cool, cool + 25));
      done.add(
          new PlannedLoad(
              load.id(),
              load.carrierId(),
              load.carrierNumber(),
              load.lotIds(),
              visits,
              load.pattern()));
    }
    int number = numbers.merge(machineId, 1, Integer::sum);
    PlannedBatch batch =
        new PlannedBatch(
            machineId + " #" + number,
            zinc ? "kettle" : "paint",
            machineId,
            setting,
            start - setup,
            start,
            start + dwell,
            done);
    batches.add(batch);
    return batch;
  }

  private List<PlannedVisit> visits(
      List<String> stops, List<Integer> minutes, int fromMin, List<Lot> group) {
    List<PlannedVisit> visits = new ArrayList<>();
    int at = fromMin;
    for (int i = 0; i < stops.size(); i++) {
      String stop = stops.get(i);
      int places = stop.equals("hang") || stop.equals("pickle") ? 2 : 1;
      int place = 1;
      for (int p = 2; p <= places; p++) {
        if (free.getOrDefault(stop + p, 0) < free.getOrDefault(stop + place, 0)) {
          place = p;
        }
      }
      boolean change =
          stop.equals("booth") && !boothColour.equals(group.get(0).finish().materialId());
      int setup = change ? 15 : 0;
      int start = inShift(Math.max(at, free.getOrDefault(stop + place, 0)) + setup, minutes.get(i));
      if (stop.equals("booth")) {
        boothColour = group.get(0).finish().materialId();
      }
      visits.add(new PlannedVisit(stop, place, start - setup, start, start + minutes.get(i)));
      at = start + minutes.get(i);
      free.put(stop + place, at);
    }
    return visits;
  }

  private static int inShift(int from, int minutes) {
    return shifts().earliestStart(from, minutes);
  }

  static HangPattern grid(CarrierSpec carrier, List<Lot> group) {
    CarrierFace face = carrier.face();
    List<HungPiece> pieces = new ArrayList<>();
    double x = face.gapAcrossMm();
    double y = face.hookDropMm();
    double row = 0;
    int side = 0;
    for (Lot lot : group) {
      for (int i = 0; i < lot.pieces(); i++) {
        if (x + lot.item().acrossMm() > face.widthMm()) {
          x = face.gapAcrossMm();
          y += row + face.gapDownMm() + face.hookDropMm();
          row = 0;
        }
        if (y + lot.item().dropMm() > face.heightMm() && side + 1 < face.faces()) {
          side++;
          x = face.gapAcrossMm();
          y = face.hookDropMm();
          row = 0;
        }
        pieces.add(
            new HungPiece(
                lot.item().key(), side, x, y, lot.item().acrossMm(), lot.item().dropMm(), false));
        x += lot.item().acrossMm() + face.gapAcrossMm();
        row = Math.max(row, lot.item().dropMm());
      }
    }
    return new HangPattern(pieces);
  }

  Brief brief() {
    return new Brief(
        "Harbour week 46",
        MONDAY,
        6 * DAY,
        lines(),
        List.of(rack(), beam(), basket()),
        lots,
        kits,
        List.of(),
        Goals.usual(),
        List.of(),
        List.of(),
        List.of());
  }

  Plan plan() {
    int loads = batches.stream().mapToInt(b -> b.loads().size()).sum();
    long run = batches.stream().mapToLong(PlannedBatch::dwellMin).sum();
    return new Plan(
        batches,
        leftOut,
        new PlanFigures(
            run,
            1,
            150,
            10,
            10,
            45,
            3,
            loads,
            batches.size(),
            1,
            300,
            0,
            0,
            leftOut.size(),
            0,
            12345),
        new SolveNote(1, 1000, "Construction, then annealing, 1000 steps, seed 1."));
  }
}
