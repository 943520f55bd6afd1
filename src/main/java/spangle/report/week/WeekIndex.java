package spangle.report.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Finish;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.report.BatchNote;
import spangle.report.JobReason;
import spangle.report.LoadNote;
import spangle.report.LotNote;
import spangle.report.Swatch;
import spangle.report.WeekReport;

/** Looks up what the plan names. */
public final class WeekIndex {
  /** What hangs and finds no time before the week ends. */
  public static final String NOT_THIS_WEEK = "not this week";

  private final WeekReport report;
  private final WeekTime time;
  private final Say say;
  private final Map<String, Lot> lots;
  private final Map<String, CarrierSpec> carriers;
  private final Map<String, LineSpec> lines;
  private final Map<String, LotNote> lotNotes;
  private final Map<String, LoadNote> loadNotes;
  private final Map<String, BatchNote> batchNotes;
  private final Map<String, Swatch> swatches;
  private final Map<String, String> reasons;
  private final Map<String, Integer> patterns = new LinkedHashMap<>();
  private final List<LoadPlace> loads;
  private final Map<String, LoadPlace> loadOfLot = new LinkedHashMap<>();

  /** Indexes a report; a plan that names what the brief does not know is refused. */
  public WeekIndex(WeekReport report) {
    this.report = report;
    Brief brief = report.brief();
    time = new WeekTime(brief.monday());
    say = new Say(report.heading().decimalComma());
    lots = by(brief.lots(), Lot::id);
    carriers = by(brief.carriers(), CarrierSpec::id);
    lines = by(brief.lines(), LineSpec::id);
    lotNotes = by(report.facts().lots(), LotNote::lotId);
    loadNotes = by(report.facts().loads(), LoadNote::loadId);
    batchNotes = by(report.facts().batches(), BatchNote::batchId);
    swatches = by(report.stores().swatches(), Swatch::materialId);
    reasons = new LinkedHashMap<>();
    for (JobReason reason : report.waiting().reasons()) {
      reasons.putIfAbsent(reason.jobId(), reason.words());
    }
    for (Lot lot : brief.lots()) {
      patterns.putIfAbsent(colourKey(lot.finish()), patterns.size());
    }
    List<LoadPlace> places = new ArrayList<>();
    for (PlannedBatch batch : report.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        places.add(place(batch, load));
      }
    }
    places.sort(
        Comparator.comparing((LoadPlace p) -> brief.lines().indexOf(p.line()))
            .thenComparing(LoadPlace::startMin)
            .thenComparing(LoadPlace::id));
    loads = List.copyOf(places);
    for (LoadPlace place : loads) {
      place.lots().forEach(lot -> loadOfLot.put(lot.id(), place));
    }
  }

  private static <T> Map<String, T> by(List<T> items, Function<T, String> key) {
    Map<String, T> map = new LinkedHashMap<>();
    items.forEach(item -> map.putIfAbsent(key.apply(item), item));
    return map;
  }

  private LoadPlace place(PlannedBatch batch, PlannedLoad load) {
    LineSpec line = known(lines, batch.lineId(), "line", load);
    MachineSpec machine =
        line.machines().stream()
            .filter(m -> m.id().equals(batch.machineId()))
            .findFirst()
            .orElseThrow(() -> unknown("machine", batch.machineId(), load));
    return new LoadPlace(
        load,
        batch,
        line,
        machine,
        known(carriers, load.carrierId(), "carrier", load),
        load.lotIds().stream().map(id -> known(lots, id, "lot", load)).toList());
  }

  private static <T> T known(Map<String, T> map, String id, String what, PlannedLoad load) {
    return Optional.ofNullable(map.get(id)).orElseThrow(() -> unknown(what, id, load));
  }

  private static IllegalArgumentException unknown(String what, String id, PlannedLoad load) {
    return new IllegalArgumentException(
        "load " + load.id() + " names the " + what + " " + id + ", which the brief does not know");
  }

  /** What was indexed. */
  public WeekReport report() {
    return report;
  }

  /** When a stay begins, in words; {@link #NOT_THIS_WEEK} for what hangs and has no time in it. */
  public String begins(int minute) {
    return report.brief().isBeyond(minute) ? NOT_THIS_WEEK : time.at(minute);
  }

  /** When a stay ends, in words; the same. */
  public String ends(int minute) {
    return minute > report.brief().horizonMin() ? NOT_THIS_WEEK : time.at(minute);
  }

  /** The clock alone when a stay begins; nothing for what has no time in the week. */
  public String clockOf(int minute) {
    return report.brief().isBeyond(minute) ? "" : time.clock(minute);
  }

  /** Times in words. */
  public WeekTime time() {
    return time;
  }

  /** Figures in words. */
  public Say say() {
    return say;
  }

  /** All loads: by line in the shop's order, then by the start of hanging. */
  public List<LoadPlace> loads() {
    return loads;
  }

  /** The loads of one line, by the start of hanging. */
  public List<LoadPlace> loads(LineSpec line) {
    return loads.stream().filter(p -> p.line().id().equals(line.id())).toList();
  }

  /** A lot of the brief. */
  public Optional<Lot> lot(String id) {
    return Optional.ofNullable(lots.get(id));
  }

  /** How many parts have lots that are left out, however many lots and reasons. */
  int leftOutParts() {
    return (int)
        report.plan().leftOut().stream()
            .map(l -> lot(l.lotId()).map(x -> x.jobId() + "\n" + x.partId()).orElse(l.lotId()))
            .distinct()
            .count();
  }

  /** The load a lot hangs on; empty where it is left out. */
  public Optional<LoadPlace> loadOfLot(String lotId) {
    return Optional.ofNullable(loadOfLot.get(lotId));
  }

  /** What the floor must know of a lot. */
  public Optional<LotNote> note(Lot lot) {
    return Optional.ofNullable(lotNotes.get(lot.id()));
  }

  /** What the floor must know of a load. */
  public Optional<LoadNote> note(PlannedLoad load) {
    return Optional.ofNullable(loadNotes.get(load.id()));
  }

  /** What the oven hand must know of a batch. */
  public Optional<BatchNote> note(PlannedBatch batch) {
    return Optional.ofNullable(batchNotes.get(batch.id()));
  }

  /** How a finish is shown. */
  public Optional<Swatch> swatch(Finish finish) {
    return Optional.ofNullable(swatches.get(finish.materialId()));
  }

  /** Number of the hatch that stands for a finish; alike for alike materials. */
  public int pattern(Finish finish) {
    return patterns.getOrDefault(colourKey(finish), 0);
  }

  /** The finishes of the week, one for each hatch, in the hatches' order. */
  public List<Finish> finishes() {
    Map<Integer, Finish> found = new LinkedHashMap<>();
    for (Lot lot : report.brief().lots()) {
      found.putIfAbsent(pattern(lot.finish()), lot.finish());
    }
    return List.copyOf(found.values());
  }

  /** Colour in words: the swatch's, else the finish's. */
  public String colour(Finish finish) {
    return swatch(finish).map(Swatch::words).orElse(finish.name());
  }

  /** Why a job is where it is. */
  public Optional<String> reason(String jobId) {
    return Optional.ofNullable(reasons.get(jobId));
  }

  /** The minute the sheets are made for: now, or the week's beginning. */
  public int nowMin() {
    return report.heading().nowMin().orElse(0);
  }

  private static String colourKey(Finish finish) {
    return finish.materialId().isEmpty()
        ? finish.kind() + ":" + finish.name()
        : finish.materialId();
  }
}
