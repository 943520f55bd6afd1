package spangle.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.fit.hang.HangItem;

/** Builds one lot for a test. */
public final class LotBuilder {
  private final String id;
  private String jobId;
  private String partId;
  private int pieces = 4;
  private int leg;
  private Optional<Chain> after = Optional.empty();
  private String lineId = "paint";
  private Finish finish = new Finish(0, "grey", "shelter grey", FinishKind.POWDER, "powder-grey");
  private boolean alone;
  private String batchGroup = "powder";
  private int readyMin;
  private int dueMin = 2280;
  private int weight = 1;
  private boolean lastLeg = true;
  private List<Dwell> dwells = List.of(new Dwell(0, 20, 40), new Dwell(1, 10, 30));
  private List<String> machines = List.of("oven-1", "oven-2");
  private List<String> carriers = List.of("rack");
  private HangItem item;
  private List<Visit> visits =
      List.of(new Visit("hang", 10, 0), new Visit("booth", 0, 5), new Visit("unload", 5, 0));
  private double massKg = 8;
  private double materialKg = 0.4;
  private List<String> kitIds = List.of();

  LotBuilder(String id) {
    this.id = id;
    this.jobId = "job-" + id;
    this.partId = "part-" + id;
    this.item = new HangItem(id, 4, 200, 300, 50, 2, 1, false);
  }

  LotBuilder zinc() {
    lineId = "zinc";
    finish = new Finish(0, "hung/A", "galvanized, hung", FinishKind.ZINC, "zinc");
    batchGroup = "zinc";
    dwells = List.of(new Dwell(0, 4, 8));
    machines = List.of("kettle");
    carriers = List.of("beam");
    visits = List.of(new Visit("pickle", 30, 0), new Visit("flux", 2, 0), new Visit("cool", 10, 0));
    item = new HangItem(id, 4, 200, 300, 50, 10, 1, false);
    massKg = 40;
    materialKg = 2;
    return this;
  }

  public LotBuilder yellow() {
    finish = new Finish(1, "yellow", "buoy yellow", FinishKind.POWDER, "powder-yellow");
    return this;
  }

  public LotBuilder finish(Finish value) {
    finish = value;
    return this;
  }

  public LotBuilder fromLot(String lot) {
    finish = finish.fromLot(lot);
    return this;
  }

  /** The part of an order it belongs to. */
  public LotBuilder of(String job, String part) {
    jobId = job;
    partId = part;
    return this;
  }

  public LotBuilder job(String value) {
    jobId = value;
    return this;
  }

  public LotBuilder line(String value) {
    lineId = value;
    return this;
  }

  public LotBuilder alone() {
    alone = true;
    return this;
  }

  public LotBuilder batchGroup(String value) {
    batchGroup = value;
    return this;
  }

  public LotBuilder ready(int min) {
    readyMin = min;
    return this;
  }

  public LotBuilder due(int min) {
    dueMin = min;
    return this;
  }

  public LotBuilder weight(int value) {
    weight = value;
    return this;
  }

  public LotBuilder earlierLeg() {
    lastLeg = false;
    return this;
  }

  public LotBuilder after(String lotId, int minGapMin, int maxGapMin) {
    leg = 1;
    after = Optional.of(new Chain(lotId, minGapMin, maxGapMin));
    return this;
  }

  public LotBuilder dwells(Dwell... values) {
    dwells = List.of(values);
    return this;
  }

  public LotBuilder machines(String... values) {
    machines = List.of(values);
    return this;
  }

  public LotBuilder carriers(String... values) {
    carriers = List.of(values);
    return this;
  }

  /** Pieces and how they hang, the mass of the lot with them. */
  public LotBuilder item(HangItem value) {
    item = value;
    pieces = value.pieces();
    massKg = value.pieces() * value.massKg();
    return this;
  }

  public LotBuilder massKg(double value) {
    massKg = value;
    return this;
  }

  public LotBuilder material(double kg) {
    materialKg = kg;
    return this;
  }

  public LotBuilder visits(Visit... values) {
    visits = List.of(values);
    return this;
  }

  public LotBuilder alsoVisits(Visit value) {
    visits = new ArrayList<>(visits);
    visits.add(value);
    return this;
  }

  public LotBuilder kits(String... values) {
    kitIds = List.of(values);
    return this;
  }

  public Lot build() {
    return new Lot(
        id,
        jobId,
        partId,
        "lot " + id,
        pieces,
        leg,
        after,
        lineId,
        finish,
        alone,
        batchGroup,
        readyMin,
        dueMin,
        weight,
        lastLeg,
        dwells,
        machines,
        carriers,
        item,
        visits,
        1.0,
        massKg,
        materialKg,
        kitIds);
  }
}
