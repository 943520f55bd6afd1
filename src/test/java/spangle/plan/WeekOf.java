package spangle.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;

/** Writes small briefs for tests, a few words at a time. */
public final class WeekOf {
  /** Minutes of a week. */
  public static final int HORIZON = 7 * 24 * 60;

  private final List<LineSpec> lines = new ArrayList<>();
  private final List<CarrierSpec> carriers = new ArrayList<>();
  private final List<Lot> lots = new ArrayList<>();
  private final List<Kit> kits = new ArrayList<>();
  private final List<Supply> supplies = new ArrayList<>();
  private final List<PlannedBatch> frozen = new ArrayList<>();
  private final List<PlannedBatch> announced = new ArrayList<>();
  private Goals goals = Goals.usual();
  private int horizonMin = HORIZON;

  /** Open all week. */
  public static WorkCalendar always() {
    return WorkCalendar.always(HORIZON);
  }

  /** Open in these stretches: start, end, start, end. */
  public static WorkCalendar open(int... minutes) {
    List<Span> spans = new ArrayList<>();
    for (int k = 0; k < minutes.length; k += 2) {
      spans.add(new Span(minutes[k], minutes[k + 1]));
    }
    return new WorkCalendar(spans);
  }

  /** A station without set-ups, open all week. */
  public static StationSpec station(String id, int alike) {
    return station(id, alike, always(), Integer.MAX_VALUE);
  }

  /** A station without set-ups. */
  public static StationSpec station(String id, int alike, WorkCalendar calendar, int longestWait) {
    return new StationSpec(
        id, id, alike, calendar, SetupTable.none(List.of("any")), 0, longestWait);
  }

  /** A booth of one place whose change between any two colours takes so long and costs as much. */
  public static StationSpec booth(String id, int colours, int changeMin) {
    return new StationSpec(id, id, 1, always(), changes(colours, changeMin), 0, Integer.MAX_VALUE);
  }

  /** A table in which every change between two states takes so long and costs as much. */
  public static SetupTable changes(int states, int minutes) {
    List<String> names = new ArrayList<>();
    List<List<Integer>> rows = new ArrayList<>();
    for (int from = 0; from < states; from++) {
      names.add("state " + from);
      List<Integer> row = new ArrayList<>();
      for (int to = 0; to < states; to++) {
        row.add(from == to ? 0 : minutes);
      }
      rows.add(row);
    }
    return new SetupTable(names, rows, rows);
  }

  /** An oven that bears any mass. */
  public static MachineSpec oven(String id, int places, WorkCalendar calendar) {
    return new MachineSpec(id, id, places, Double.POSITIVE_INFINITY, calendar, 0, 0, 0);
  }

  /** A line. */
  public WeekOf line(
      String id,
      LineKind kind,
      List<StationSpec> before,
      List<MachineSpec> machines,
      List<StationSpec> after,
      SetupTable settingChange) {
    List<Setting> settings = new ArrayList<>();
    for (int s = 0; s < settingChange.states().size(); s++) {
      settings.add(new Setting(s, 180 + 10 * s + " C", 180 + 10 * s));
    }
    lines.add(new LineSpec(id, id, kind, before, machines, after, settings, settingChange));
    return this;
  }

  /** A frame of one square metre and one place. */
  public WeekOf rack(String id, String lineId, int owned) {
    return carrier(
        new CarrierSpec(
            id,
            id,
            lineId,
            CarrierFace.plain(1000, 1000, CarrierFace.Style.FREE),
            owned,
            1,
            20,
            0,
            0));
  }

  /** A carrier. */
  public WeekOf carrier(CarrierSpec carrier) {
    carriers.add(carrier);
    return this;
  }

  /** A lot. */
  public WeekOf lot(LotOf lot) {
    lots.add(lot.made());
    return this;
  }

  /** A kit. */
  public WeekOf kit(Kit kit) {
    kits.add(kit);
    return this;
  }

  /** A kit of so many sets, one line for each part named, so many pieces for one set. */
  public WeekOf kit(String id, int sets, int dueMin, int weight, Object... partsAndPieces) {
    List<Kit.KitLine> bill = new ArrayList<>();
    for (int k = 0; k < partsAndPieces.length; k += 2) {
      String part = (String) partsAndPieces[k];
      bill.add(new Kit.KitLine(part, part, (int) partsAndPieces[k + 1], 0));
    }
    return kit(new Kit(id, id, sets, dueMin, weight, bill));
  }

  /** A limited supply. */
  public WeekOf supply(Supply supply) {
    supplies.add(supply);
    return this;
  }

  /** Weights. */
  public WeekOf goals(Goals weights) {
    goals = weights;
    return this;
  }

  /** Another horizon. */
  public WeekOf until(int minute) {
    horizonMin = minute;
    return this;
  }

  /** Batches that have started. */
  public WeekOf frozen(List<PlannedBatch> batches) {
    frozen.addAll(batches);
    return this;
  }

  /** Batches of an earlier plan. */
  public WeekOf announced(List<PlannedBatch> batches) {
    announced.addAll(batches);
    return this;
  }

  /** The brief. */
  public Brief brief() {
    return new Brief(
        "test week",
        LocalDate.of(2026, 1, 5),
        horizonMin,
        lines,
        carriers,
        lots,
        kits,
        supplies,
        goals,
        frozen,
        announced,
        List.of());
  }

  /** One lot, with what most tests do not care about filled in. */
  public static final class LotOf {
    private final String id;
    private final String lineId;
    private String partId;
    private final List<Dwell> dwells = new ArrayList<>();
    private final List<String> machines = new ArrayList<>();
    private final List<String> carriers = new ArrayList<>();
    private final List<Visit> visits = new ArrayList<>();
    private final List<String> kitIds = new ArrayList<>();
    private Optional<Chain> after = Optional.empty();
    private int finish;
    private String group = "powder";
    private int readyMin;
    private int dueMin = HORIZON;
    private int weight = 1;
    private boolean lastLeg = true;
    private boolean alone;
    private double sideMm = 400;
    private double massKg = 10;
    private double materialKg;
    private String materialId = "none";
    private int leg;

    private LotOf(String id, String lineId) {
      this.id = id;
      this.partId = id;
      this.lineId = lineId;
    }

    /** A lot of one square piece of 400 mm and 10 kg. */
    public static LotOf lot(String id, String lineId) {
      return new LotOf(id, lineId);
    }

    public LotOf dwell(int setting, int minMin, int maxMin) {
      dwells.add(new Dwell(setting, minMin, maxMin));
      return this;
    }

    public LotOf in(String... machineIds) {
      machines.addAll(List.of(machineIds));
      return this;
    }

    public LotOf on(String... carrierIds) {
      carriers.addAll(List.of(carrierIds));
      return this;
    }

    public LotOf visit(String stationId, int fixedMin, double variableMin) {
      visits.add(new Visit(stationId, fixedMin, variableMin));
      return this;
    }

    public LotOf after(String lotId, int minGap, int maxGap) {
      after = Optional.of(new Chain(lotId, minGap, maxGap));
      leg = 1;
      return this;
    }

    public LotOf finish(int index) {
      finish = index;
      return this;
    }

    public LotOf group(String name) {
      group = name;
      return this;
    }

    public LotOf ready(int minute) {
      readyMin = minute;
      return this;
    }

    public LotOf due(int minute) {
      dueMin = minute;
      return this;
    }

    public LotOf weight(int value) {
      weight = value;
      return this;
    }

    public LotOf firstLeg() {
      lastLeg = false;
      return this;
    }

    public LotOf alone() {
      alone = true;
      return this;
    }

    public LotOf side(double mm) {
      sideMm = mm;
      return this;
    }

    public LotOf mass(double kg) {
      massKg = kg;
      return this;
    }

    public LotOf draws(String id, double kg) {
      materialId = id;
      materialKg = kg;
      return this;
    }

    public LotOf kit(String kitId) {
      kitIds.add(kitId);
      return this;
    }

    /** A piece of that part, which kits may want. */
    public LotOf part(String name) {
      partId = name;
      return this;
    }

    Lot made() {
      return new Lot(
          id,
          partId,
          partId,
          id,
          1,
          leg,
          after,
          lineId,
          new Finish(
              finish,
              "finish " + finish + " " + materialId,
              "finish " + finish,
              FinishKind.POWDER,
              materialId),
          alone,
          group,
          readyMin,
          dueMin,
          weight,
          lastLeg,
          dwells,
          machines,
          carriers,
          new HangItem(id, 1, sideMm, sideMm, 0, massKg, 0, false),
          visits,
          sideMm * sideMm / 1e6,
          massKg,
          materialKg,
          kitIds);
    }
  }
}
