package spangle.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.fit.hang.CarrierFace;

/** Builds a brief of the yard shop for a test; see {@link PlanFixtures}. */
public final class BriefBuilder {
  private int horizonMin = 7 * 24 * 60;
  private List<LineSpec> lines;
  private List<CarrierSpec> carriers;
  private final List<Lot> lots = new ArrayList<>();
  private final List<Kit> kits = new ArrayList<>();
  private final List<Supply> supplies = new ArrayList<>();
  private Goals goals = Goals.usual();
  private final List<PlannedBatch> frozen = new ArrayList<>();
  private final List<PlannedBatch> announced = new ArrayList<>();
  private final List<BathSpec> baths = new ArrayList<>();
  private final List<Scrapped> scrapped = new ArrayList<>();
  private final List<Caged> caged = new ArrayList<>();
  private final List<String> retired = new ArrayList<>();

  BriefBuilder() {
    lines = List.of(paint(), zinc());
    carriers = List.of(rack(), frame(), beam(), basket());
  }

  /** Both shifts of the yard. */
  public static WorkCalendar shifts() {
    return new WorkCalendar(List.of(new Span(360, 840), new Span(1800, 2280)));
  }

  private static StationSpec station(String id, int alike) {
    SetupTable none = SetupTable.none(List.of("ready"));
    return new StationSpec(id, id, alike, shifts(), none, 0, Integer.MAX_VALUE);
  }

  private static MachineSpec machine(String id, int places, double maxMassKg) {
    return new MachineSpec(id, id, places, maxMassKg, shifts(), 0, 0, 0);
  }

  private static LineSpec paint() {
    SetupTable colours =
        new SetupTable(
            List.of("grey", "yellow"),
            List.of(List.of(0, 10), List.of(20, 0)),
            List.of(List.of(0, 1), List.of(2, 0)));
    SetupTable settings =
        new SetupTable(
            List.of("180 C", "200 C"),
            List.of(List.of(0, 15), List.of(30, 0)),
            List.of(List.of(0, 3), List.of(4, 0)));
    StationSpec booth =
        new StationSpec("booth", "booth", 1, shifts(), colours, 0, Integer.MAX_VALUE);
    return new LineSpec(
        "paint",
        "powder line",
        LineKind.POWDER,
        List.of(station("hang", 2), booth),
        List.of(machine("oven-1", 2, 500), machine("oven-2", 2, 500)),
        List.of(station("unload", 1)),
        List.of(new Setting(0, "180 C", 180), new Setting(1, "200 C", 200)),
        settings);
  }

  private static LineSpec zinc() {
    return new LineSpec(
        "zinc",
        "zinc line",
        LineKind.ZINC,
        List.of(station("pickle", 2), station("flux", 1)),
        List.of(machine("kettle", 1, 1000)),
        List.of(station("cool", 1)),
        List.of(new Setting(0, "450 C", 450)),
        SetupTable.none(List.of("450 C")));
  }

  private static CarrierFace face(CarrierFace.Style style, double pitchMm) {
    return new CarrierFace(1000, 800, 300, 1, 50, 40, 60, pitchMm, 100, 20, style);
  }

  private static CarrierSpec rack() {
    return new CarrierSpec(
        "rack", "rack", "paint", face(CarrierFace.Style.ROWS, 50), 2, 1, 20, 0, 0);
  }

  private static CarrierSpec frame() {
    return new CarrierSpec(
        "frame", "mesh frame", "paint", face(CarrierFace.Style.FREE, 0), 1, 1, 20, 0, 0);
  }

  private static CarrierSpec beam() {
    return new CarrierSpec("beam", "beam", "zinc", face(CarrierFace.Style.ROWS, 0), 2, 1, 50, 0, 0);
  }

  private static CarrierSpec basket() {
    CarrierFace bulk = new CarrierFace(400, 500, 400, 1, 0, 0, 0, 0, 60, 0, CarrierFace.Style.BULK);
    return new CarrierSpec("basket", "spin basket", "zinc", bulk, 1, 1, 30, 0, 0);
  }

  public BriefBuilder lots(LotBuilder... values) {
    for (LotBuilder lot : values) {
      lots.add(lot.build());
    }
    return this;
  }

  public BriefBuilder kit(Kit kit) {
    kits.add(kit);
    return this;
  }

  public BriefBuilder supply(String materialId, Supply.Arrival... arrivals) {
    supplies.add(new Supply(materialId, materialId, List.of(arrivals)));
    return this;
  }

  /** What is kept of one maker's lot. */
  public BriefBuilder kept(String materialId, String lot, Supply.Arrival... arrivals) {
    supplies.add(new Supply(materialId, materialId, lot, List.of(arrivals)));
    return this;
  }

  /** What a kettle's zinc must cover. */
  public BriefBuilder bath(BathSpec bath) {
    baths.add(bath);
    return this;
  }

  public BriefBuilder goals(Goals value) {
    goals = value;
    return this;
  }

  public BriefBuilder horizon(int min) {
    horizonMin = min;
    return this;
  }

  public BriefBuilder frozen(PlannedBatch... batches) {
    frozen.addAll(List.of(batches));
    return this;
  }

  public BriefBuilder announced(PlannedBatch... batches) {
    announced.addAll(List.of(batches));
    return this;
  }

  /** Changes one machine of any line. */
  public BriefBuilder machine(String id, UnaryOperator<MachineSpec> change) {
    lines =
        lines.stream()
            .map(
                line ->
                    line.with(
                        line.before(),
                        line.machines().stream()
                            .map(m -> m.id().equals(id) ? change.apply(m) : m)
                            .toList(),
                        line.after()))
            .toList();
    return this;
  }

  /** Makes a line another firm's. */
  public BriefBuilder awayLine(String id) {
    lines =
        lines.stream()
            .map(
                line ->
                    line.id().equals(id)
                        ? new LineSpec(
                            line.id(),
                            line.name(),
                            LineKind.OUTSIDE,
                            line.before(),
                            line.machines(),
                            line.after(),
                            line.settings(),
                            line.settingChange())
                        : line)
            .toList();
    return this;
  }

  /** Changes one station of any line. */
  public BriefBuilder station(String id, UnaryOperator<StationSpec> change) {
    UnaryOperator<List<StationSpec>> all =
        stations -> stations.stream().map(s -> s.id().equals(id) ? change.apply(s) : s).toList();
    lines =
        lines.stream()
            .map(
                line ->
                    line.with(all.apply(line.before()), line.machines(), all.apply(line.after())))
            .toList();
    return this;
  }

  /** A station's longest wait after it. */
  public BriefBuilder longestWaitAfter(String stationId, int minutes) {
    return station(stationId, s -> s.waiting(minutes));
  }

  /** Changes one carrier. */
  public BriefBuilder carrier(String id, UnaryOperator<CarrierSpec> change) {
    carriers = carriers.stream().map(c -> c.id().equals(id) ? change.apply(c) : c).toList();
    return this;
  }

  /** Pieces of a lot's part that are beyond saving. */
  public BriefBuilder scrapped(String lot, int event, int pieces, boolean rejected) {
    scrapped.add(new Scrapped("job-" + lot, "part-" + lot, event, 0, pieces, rejected));
    return this;
  }

  /** Rejected pieces of a lot's part that wait in the cage. */
  public BriefBuilder caged(String lot, int pieces) {
    caged.add(new Caged("job-" + lot, "part-" + lot, pieces));
    return this;
  }

  /** A load that hung and was taken down. */
  public BriefBuilder retired(String load) {
    retired.add(load);
    return this;
  }

  public Brief build() {
    return new Brief(
        "yard",
        LocalDate.of(2031, 3, 3),
        horizonMin,
        lines,
        carriers,
        lots,
        kits,
        supplies,
        goals,
        frozen,
        announced,
        baths,
        scrapped,
        caged,
        retired);
  }
}
