package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.Brief;
import spangle.plan.Chain;
import spangle.plan.LineSpec;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.StationSpec;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;
import spangle.plan.event.LoadState;
import spangle.plan.event.LotNames;
import spangle.plan.event.Slippage;
import spangle.plan.event.Stage;
import spangle.plan.event.WeekState;
import spangle.plan.json.PlanFile;

/**
 * The part of the old plan that stays in front: what hangs or has gone further in any case, sheets
 * that are out unless something stands against them, and what begins in the next hours as long as
 * nothing ahead of it falls out.
 */
final class FrozenFront {
  private final PlanFile kept;
  private final WeekState state;
  private final List<Event> news;
  private final Brief brief;
  private Slippage slippage;
  private final Map<String, Lot> before = new HashMap<>();
  private final Map<String, Lot> now = new HashMap<>();
  private final Map<String, Integer> lotEnd = new HashMap<>();
  private final List<PlannedBatch> frozen = new ArrayList<>();
  private final List<PlannedBatch> open = new ArrayList<>();
  private final Set<String> lots = new LinkedHashSet<>();
  private final Map<String, String> forced = new TreeMap<>();
  private final Map<String, String> reasons = new TreeMap<>();
  private final int atMin;

  FrozenFront(
      PlanFile kept, Brief brief, WeekState state, List<Event> events, int known, int atMin) {
    this.kept = kept;
    this.state = state;
    this.atMin = atMin;
    this.news = events.stream().filter(e -> e.number() > known).toList();
    this.brief = brief;
    this.slippage = new Slippage(brief, atMin);
    kept.brief().lots().forEach(l -> before.put(l.id(), l));
    brief.lots().forEach(l -> now.put(l.id(), l));
  }

  List<PlannedBatch> frozen() {
    return List.copyOf(frozen);
  }

  /** What is left of the old plan to move. */
  List<PlannedBatch> open() {
    return List.copyOf(open);
  }

  /** Lots in what stays. */
  Set<String> lots() {
    return Set.copyOf(lots);
  }

  Map<String, String> forced() {
    return new TreeMap<>(forced);
  }

  /** What stands against loads that may move, by load; none where the search is free. */
  Map<String, String> reasons() {
    return new TreeMap<>(reasons);
  }

  void freeze(int freezeUntilMin) {
    List<PlannedBatch> inTime = new ArrayList<>(kept.plan().batches());
    inTime.sort(Comparator.comparingInt(PlannedBatch::startMin).thenComparing(PlannedBatch::id));
    Set<String> parted = new HashSet<>();
    List<PlannedBatch> waiting = standWhatHangs(inTime, parted);
    for (Set<String> late = notTogether(); !late.isEmpty(); late = notTogether()) {
      parted.addAll(late);
      waiting = standWhatHangs(inTime, parted);
    }
    recallWhatWaits(inTime);
    freeze(waiting, freezeUntilMin);
    for (PlannedBatch batch : inTime) {
      List<PlannedLoad> left =
          batch.loads().stream()
              .filter(l -> l.lotIds().stream().noneMatch(lots::contains))
              .toList();
      left.stream()
          .filter(l -> stage(l) == Stage.RELEASED)
          .forEach(
              l ->
                  forced.putIfAbsent(
                      l.id(), against(batch, l).orElse("its carrier is not back in time")));
      for (PlannedLoad load : left) {
        againstItself(batch, load)
            .or(() -> shut(batch, load))
            .ifPresent(why -> reasons.put(load.id(), why));
      }
      if (!left.isEmpty()) {
        open.add(batch.with(left));
      }
    }
  }

  /**
   * Stands every batch with something that hangs, and returns the others.
   *
   * @param parted loads that may not join what hangs in their batch
   */
  private List<PlannedBatch> standWhatHangs(List<PlannedBatch> inTime, Set<String> parted) {
    slippage = new Slippage(brief, atMin);
    frozen.clear();
    lots.clear();
    lotEnd.clear();
    List<PlannedBatch> waiting = new ArrayList<>();
    for (PlannedBatch batch : inTime) {
      if (batch.loads().stream().noneMatch(l -> stage(l).fixed())) {
        waiting.add(batch);
      } else {
        stay(slippage.settle(batch.with(companyOf(batch, parted)), state.loads()));
      }
    }
    return waiting;
  }

  /** Sheets that are out and join what hangs in their batch, which is late. */
  private void recallWhatWaits(List<PlannedBatch> inTime) {
    Map<String, Integer> starts = new HashMap<>();
    inTime.forEach(b -> starts.put(b.id(), b.startMin()));
    for (PlannedBatch batch : frozen) {
      int was = starts.getOrDefault(batch.id(), batch.startMin());
      batch.loads().stream()
          .filter(l -> stage(l) == Stage.RELEASED && batch.startMin() != was)
          .forEach(l -> forced.put(l.id(), "what hangs in its batch is late"));
    }
  }

  private record Use(PlannedLoad load, int firstMin, int lastMin) {
    boolean meets(Use other) {
      return load.carrierNumber() > 0
          && load.carrierNumber() == other.load.carrierNumber()
          && load.carrierId().equals(other.load.carrierId())
          && firstMin < other.lastMin
          && other.firstMin < lastMin;
    }
  }

  /** Loads still to be hung that cannot join what hangs in their batch. */
  private Set<String> notTogether() {
    Set<String> parted = carrierNotBack();
    for (PlannedBatch batch : frozen) {
      if (brief.isBeyond(batch.startMin())) {
        batch.loads().stream().filter(l -> !stage(l).fixed()).forEach(l -> parted.add(l.id()));
      }
    }
    return parted;
  }

  /** Loads still to be hung whose carrier is late with other work when they want it. */
  private Set<String> carrierNotBack() {
    List<Use> uses = new ArrayList<>();
    for (PlannedBatch batch : frozen) {
      for (PlannedLoad load : batch.loads()) {
        uses.add(new Use(load, LoadTimes.first(batch, load), LoadTimes.last(batch, load)));
      }
    }
    uses.sort(Comparator.comparingInt(Use::firstMin).thenComparing(u -> u.load().id()));
    Set<String> late = new HashSet<>();
    for (int i = 0; i < uses.size(); i++) {
      Use use = uses.get(i);
      List<Use> ahead = uses.subList(0, i);
      if (!stage(use.load()).fixed() && ahead.stream().anyMatch(use::meets)) {
        late.add(use.load().id());
      }
    }
    return late;
  }

  /** In the order in which they begin; on each line up to the first that cannot stay. */
  private void freeze(List<PlannedBatch> batches, int untilMin) {
    Comparator<PlannedBatch> byFirst = Comparator.comparingInt(b -> LoadTimes.first(b));
    // Two that begin in one minute pass the stations in the order in which they come out of them.
    batches.sort(byFirst.thenComparingInt(PlannedBatch::startMin).thenComparing(PlannedBatch::id));
    Set<String> broken = new HashSet<>();
    for (PlannedBatch batch : batches) {
      boolean released = batch.loads().stream().anyMatch(l -> stage(l) == Stage.RELEASED);
      boolean soon = !broken.contains(batch.lineId()) && LoadTimes.first(batch) < untilMin;
      if (!released && !soon) {
        broken.add(batch.lineId());
        continue;
      }
      Optional<String> against = against(batch);
      if (against.isEmpty() && slippage.fits(batch)) {
        slippage.place(batch);
        stay(batch);
        continue;
      }
      broken.add(batch.lineId());
      if (released) {
        String why = against.orElse("what hangs ahead of it is late");
        batch.loads().stream()
            .filter(l -> stage(l) == Stage.RELEASED)
            .forEach(l -> forced.put(l.id(), why));
      }
    }
  }

  private void stay(PlannedBatch batch) {
    frozen.add(batch);
    for (PlannedLoad load : batch.loads()) {
      lots.addAll(load.lotIds());
      load.lotIds().forEach(id -> lotEnd.put(id, LoadTimes.last(batch, load)));
    }
  }

  private Stage stage(PlannedLoad load) {
    return state.load(load.id()).map(LoadState::stage).orElse(Stage.PLANNED);
  }

  /** Loads that hang, and those of the same batch that can still join them. */
  private List<PlannedLoad> companyOf(PlannedBatch batch, Set<String> parted) {
    return batch.loads().stream()
        .filter(
            l ->
                stage(l).fixed()
                    || (!parted.contains(l.id())
                        && LoadTimes.first(batch, l) >= atMin
                        && against(batch, l).isEmpty()))
        .toList();
  }

  private Optional<String> against(PlannedBatch batch) {
    return batch.loads().stream().map(l -> against(batch, l)).flatMap(Optional::stream).findFirst();
  }

  /** What stands against a load as it was planned; empty where nothing does. */
  private Optional<String> against(PlannedBatch batch, PlannedLoad load) {
    int first = LoadTimes.first(batch, load);
    return againstItself(batch, load)
        .or(
            () ->
                load.lotIds().stream()
                    .flatMap(id -> Optional.ofNullable(now.get(id)).stream())
                    .filter(lot -> !chainHolds(lot, first))
                    .findFirst()
                    .map(lot -> "the step before it is late"));
  }

  /** A station, oven or kettle that does not work when the load would be there. */
  private Optional<String> shut(PlannedBatch batch, PlannedLoad load) {
    Map<String, Span> stays = new TreeMap<>();
    load.visits().forEach(v -> stays.put(v.stationId(), new Span(v.startMin(), v.endMin())));
    stays.put(batch.machineId(), new Span(batch.startMin(), batch.endMin()));
    for (LineSpec line : brief.lines()) {
      for (MachineSpec machine : line.machines()) {
        Span stay = stays.get(machine.id());
        if (stay != null && !works(machine.calendar(), stay)) {
          return Optional.of(machine.name() + " does not work then");
        }
      }
      for (StationSpec station :
          Stream.concat(line.before().stream(), line.after().stream()).toList()) {
        Span stay = stays.get(station.id());
        if (stay != null && !works(station.calendar(), stay)) {
          return Optional.of(station.name() + " does not work then");
        }
      }
    }
    return Optional.empty();
  }

  private static boolean works(WorkCalendar calendar, Span stay) {
    return calendar.holds(stay.startMin(), stay.endMin());
  }

  /** The same, the steps before it aside. */
  private Optional<String> againstItself(PlannedBatch batch, PlannedLoad load) {
    int first = LoadTimes.first(batch, load);
    if (state.takenDown().contains(load.id())) {
      return Optional.of("it was taken down");
    }
    if (first < atMin) {
      return Optional.of("its time has passed");
    }
    for (String id : load.lotIds()) {
      Lot was = before.get(id);
      Lot is = now.get(id);
      if (was == null || is == null) {
        return Optional.of(gone(id));
      }
      if (!sameWork(was, is) || !is.machines().contains(batch.machineId())) {
        return Optional.of(new OtherWork(brief).words(was, is));
      }
      if (is.readyMin() > first) {
        return Optional.of("its pieces are not here in time");
      }
      Optional<Event> slip = slip(is);
      if (slip.isPresent()) {
        return Optional.of(
            "its "
                + is.finish().name()
                + slip.get().figures().untilMin().stream()
                    .mapToObj(until -> " comes " + DayWords.of(until) + " now")
                    .findFirst()
                    .orElse(" comes at another time"));
      }
      if (tooLow(is, batch)) {
        return Optional.of("the zinc stands too low to cover it");
      }
    }
    return Optional.empty();
  }

  private String gone(String id) {
    String work = LotNames.work(id);
    return now.keySet().stream().anyMatch(other -> LotNames.work(other).equals(work))
        ? "its pieces come in other counts now"
        : "its pieces are not to be had, or not wanted any more";
  }

  /** The last report that its material slips. */
  private Optional<Event> slip(Lot lot) {
    return news.stream()
        .filter(
            e -> e.kind() == EventKind.SLIPPED && e.material().equals(lot.finish().materialId()))
        .reduce((earlier, later) -> later);
  }

  private boolean tooLow(Lot lot, PlannedBatch batch) {
    return brief.baths().stream()
        .filter(bath -> bath.machineId().equals(batch.machineId()))
        .anyMatch(
            bath ->
                bath.markedDownMm(batch.startMin())
                    > bath.spareMm(lot.id()).orElse(Double.POSITIVE_INFINITY));
  }

  private boolean chainHolds(Lot lot, int first) {
    Optional<Chain> after = lot.after();
    if (after.isEmpty()) {
      return true;
    }
    Integer end = lotEnd.get(after.get().lotId());
    return end != null
        && first - end >= after.get().minGapMin()
        && (long) first - end <= after.get().maxGapMin();
  }

  private static boolean sameWork(Lot was, Lot is) {
    return was.pieces() == is.pieces()
        && was.lineId().equals(is.lineId())
        && was.finish().equals(is.finish())
        && was.alone() == is.alone()
        && was.batchGroup().equals(is.batchGroup())
        && was.dwells().equals(is.dwells())
        && new HashSet<>(is.carriers()).containsAll(was.carriers())
        && was.item().equals(is.item())
        && was.visits().equals(is.visits())
        && was.massKg() == is.massKg();
  }
}
