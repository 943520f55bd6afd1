package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import spangle.plan.Brief;
import spangle.plan.Goals;
import spangle.plan.LeftOut;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.EventKind;
import spangle.plan.event.LoadTimes;
import spangle.plan.event.LotNames;
import spangle.plan.json.PlanFile;

/** Finds what a replan changed, load by load. */
final class ChangeFinder {
  private final PlanFile kept;
  private final ReplanStart start;
  private final Brief brief;
  private final Plan plan;
  private final String version;
  private final Map<String, LoadMatch.Spot> old = new HashMap<>();
  private final Map<String, LoadMatch.Spot> now = new HashMap<>();
  private final Map<String, Lot> lots = new TreeMap<>();
  private final Tellers tellers;
  private final List<ChangeList.Line> lines = new ArrayList<>();
  private int moved;
  private long minutes;

  ChangeFinder(PlanFile kept, ReplanStart start, Plan plan, String version) {
    this.kept = kept;
    this.start = start;
    this.brief = start.week().brief();
    this.plan = plan;
    this.version = version;
    spots(kept.plan(), old);
    spots(plan, now);
    kept.brief().lots().forEach(l -> lots.put(l.id(), l));
    brief.lots().forEach(l -> lots.put(l.id(), l));
    this.tellers = new Tellers(start.week(), kept.brief(), old, now, plan.leftOut());
  }

  private static void spots(Plan plan, Map<String, LoadMatch.Spot> into) {
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        load.lotIds().forEach(id -> into.put(id, new LoadMatch.Spot(batch, load)));
      }
    }
  }

  ChangeList find() {
    Set<String> fixed = new HashSet<>();
    brief.frozen().forEach(b -> b.loads().forEach(l -> fixed.add(l.id())));
    LoadMatch match = new LoadMatch(kept.plan(), plan, lots, fixed);
    for (LoadMatch.Pair pair : match.pairs()) {
      if (fixed.contains(pair.is().load().id())) {
        stayed(pair.was(), pair.is());
      } else {
        moved(pair.was(), pair.is());
      }
    }
    List<LoadMatch.Spot> gone = new ArrayList<>(match.gone());
    List<String> left = new ArrayList<>();
    gone.forEach(s -> s.load().lotIds().forEach(id -> left.add(s.load().id() + '\n' + id)));
    match.added().forEach(is -> added(is, gone, left));
    gone.forEach(was -> gone(was, left));
    lines.sort(
        Comparator.comparingInt(ChangeList.Line::startMin).thenComparing(ChangeList.Line::load));
    List<String> held = new ArrayList<>();
    start.state().loads().values().stream()
        .filter(s -> !s.suspect().isEmpty())
        .map(s -> s.load() + " is held until inspected: " + s.suspect())
        .forEach(held::add);
    start.week().held().stream()
        .filter(h -> h.gate().equals("rework-strip"))
        .map(h -> h.jobId() + " " + h.name() + ": " + h.words() + "; " + h.opens())
        .forEach(held::add);
    return new ChangeList(
        lines, held, moved, minutes, ColourOrder.reordered(kept.plan(), plan, lots, fixed));
  }

  private void stayed(LoadMatch.Spot was, LoadMatch.Spot is) {
    int late = LoadTimes.last(is.batch(), is.load()) - LoadTimes.last(was.batch(), was.load());
    if (late > Goals.SWING_MIN) {
      line(
          ChangeList.Kind.LATER,
          is.load().id(),
          is.load().lotIds(),
          "finished " + DayWords.of(LoadTimes.last(was.batch(), was.load())),
          "finished " + DayWords.of(LoadTimes.last(is.batch(), is.load())),
          start.forced().getOrDefault(is.load().id(), "it hangs and waits"),
          start.forced().containsKey(is.load().id()) ? version : "",
          is.batch().startMin());
    }
  }

  private void moved(LoadMatch.Spot was, LoadMatch.Spot is) {
    int apart = Math.abs(is.batch().startMin() - was.batch().startMin());
    boolean there =
        was.batch().machineId().equals(is.batch().machineId()) && apart <= Goals.SWING_MIN;
    if (there) {
      return;
    }
    moved++;
    minutes += apart;
    line(
        ChangeList.Kind.MOVED,
        is.load().id(),
        is.load().lotIds(),
        words(was),
        words(is),
        start.forced().getOrDefault(was.load().id(), ""),
        version,
        is.batch().startMin());
  }

  /**
   * A load that was not there: its pieces hung otherwise, or were not in the plan at all.
   *
   * @param left lots of loads that are gone, taken out here as they are found again
   */
  private void added(LoadMatch.Spot is, List<LoadMatch.Spot> gone, List<String> left) {
    Set<String> from = new LinkedHashSet<>();
    List<String> fresh = new ArrayList<>();
    LoadMatch.Spot first = null;
    for (String id : is.load().lotIds()) {
      int sources = left.size();
      for (LoadMatch.Spot was : gone) {
        Optional<String> same =
            was.load().lotIds().stream()
                .filter(o -> likeness(o).equals(likeness(id)))
                .filter(o -> left.contains(was.load().id() + '\n' + o))
                .findFirst();
        if (same.isPresent()) {
          left.remove(was.load().id() + '\n' + same.get());
          from.add(was.load().id());
          boolean sooner = first == null || was.batch().startMin() < first.batch().startMin();
          first = sooner ? was : first;
          break;
        }
      }
      if (left.size() == sources) {
        fresh.add(id);
      }
    }
    if (first == null) {
      line(
          ChangeList.Kind.NEW,
          is.load().id(),
          is.load().lotIds(),
          notBefore(is.load().lotIds().get(0)),
          words(is),
          "",
          version,
          is.batch().startMin());
      return;
    }
    moved++;
    minutes += Math.abs(is.batch().startMin() - first.batch().startMin());
    line(
        ChangeList.Kind.SPLIT,
        is.load().id(),
        is.load().lotIds(),
        words(first)
            + (from.size() > 1 ? " and others" : "")
            + (fresh.isEmpty() ? "" : "; new on it: " + pieces(fresh)),
        words(is),
        start.forced().getOrDefault(first.load().id(), ""),
        version,
        is.batch().startMin());
  }

  /** A load that is not there any more, as far as its pieces were not found elsewhere. */
  private void gone(LoadMatch.Spot was, List<String> left) {
    List<String> ids =
        was.load().lotIds().stream()
            .filter(id -> left.contains(was.load().id() + '\n' + id))
            .toList();
    if (ids.isEmpty()) {
      return;
    }
    line(
        ChangeList.Kind.DROPPED,
        was.load().id(),
        ids,
        words(was),
        whyGone(ids.get(0)),
        start.forced().getOrDefault(was.load().id(), ""),
        "",
        was.batch().startMin());
  }

  private String likeness(String id) {
    Lot lot = lots.get(id);
    return lot == null ? id : lot.likeness();
  }

  private String notBefore(String lot) {
    Lot is = lots.get(lot);
    if (is != null && LotNames.rework(is)) {
      return rejected(is);
    }
    return kept.plan().leftOut().stream()
        .filter(l -> likeness(l.lotId()).equals(likeness(lot)))
        .map(l -> "left out: " + l.reason())
        .findFirst()
        .orElse("not in the plan");
  }

  private String rejected(Lot rework) {
    return start.week().input().events().events().stream()
        .filter(e -> e.number() == LotNames.eventOf(rework))
        .map(e -> e.kind() == EventKind.STRIPPED ? "stripped" : "rejected")
        .findFirst()
        .orElse("rejected");
  }

  private String whyGone(String lot) {
    Lot was = lots.get(lot);
    for (LeftOut left : plan.leftOut()) {
      if (likeness(left.lotId()).equals(likeness(lot))) {
        return "left out: " + left.reason();
      }
    }
    if (was == null) {
      return "gone";
    }
    if (start.happened().cancelled().stream()
        .anyMatch(k -> k.jobId().equals(was.jobId()) && k.partId().equals(was.partId()))) {
      return "cancelled";
    }
    return start.week().held().stream()
        .filter(h -> h.jobId().equals(was.jobId()) && h.partId().equals(was.partId()))
        .map(h -> "held: " + h.words())
        .findFirst()
        .orElseGet(
            () ->
                brief.lots().stream().anyMatch(l -> l.jobId().equals(was.jobId()))
                    ? "its pieces travel in other lots now"
                    : "the job files do not name it any more");
  }

  private String words(LoadMatch.Spot spot) {
    PlannedBatch batch = spot.batch();
    PlannedLoad load = spot.load();
    String machine =
        brief.lines().stream()
            .flatMap((LineSpec l) -> l.machines().stream())
            .filter(m -> m.id().equals(batch.machineId()))
            .map(m -> m.name())
            .findFirst()
            .orElse(batch.machineId());
    return load.id()
        + " hang "
        + DayWords.of(LoadTimes.first(batch, load))
        + ", "
        + machine
        + " "
        + DayWords.of(batch.startMin());
  }

  private void line(
      ChangeList.Kind kind,
      String load,
      List<String> ids,
      String before,
      String after,
      String reason,
      String sheet,
      int startMin) {
    lines.add(
        new ChangeList.Line(
            kind,
            load,
            pieces(ids),
            before,
            after,
            reason,
            tellers.of(ids, kind),
            sheet,
            startMin));
  }

  private String pieces(List<String> ids) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    Set<String> jobs = new LinkedHashSet<>();
    for (String id : ids) {
      Lot lot = lots.get(id);
      if (lot != null) {
        pieces.merge(lot.label(), lot.pieces(), Integer::sum);
        jobs.add(lot.jobId());
      }
    }
    List<String> what = new ArrayList<>();
    pieces.forEach((label, n) -> what.add(String.format(Locale.ROOT, "%d x %s", n, label)));
    return String.join(", ", what) + " (" + String.join(" ", jobs) + ")";
  }
}
