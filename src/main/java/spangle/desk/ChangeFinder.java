package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spangle.plan.Brief;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.Goals;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.LotNames;
import spangle.plan.json.PlanFile;

/**
 * Finds what a replan changed, load by load. A sheet number stands in one line at most; pieces that
 * are on no load any more, or never were, are told with the reason.
 */
final class ChangeFinder {
  /** In the key of what reactive steel gets. */
  private static final String REACTIVE = "reactive steel";

  private final PlanFile kept;
  private final ReplanStart start;
  private final Brief brief;
  private final Plan plan;
  private final String version;
  private final Map<String, LoadMatch.Spot> old = new HashMap<>();
  private final Map<String, LoadMatch.Spot> now = new HashMap<>();
  private final Map<String, Lot> lots = new TreeMap<>();
  private final Map<String, Finish> finishes = new HashMap<>();
  private final Tellers tellers;
  private final ChangeWords words;
  private final PieceFate fate;
  private final RoomWords room;
  private final OutOfUse out;
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
    kept.brief().lots().forEach(l -> finishes.put(l.id(), l.finish()));
    brief.lots().forEach(l -> lots.put(l.id(), l));
    this.tellers = new Tellers(start.week(), kept.brief(), old, now, plan.leftOut());
    this.words = new ChangeWords(brief, lots);
    this.fate = new PieceFate(kept, start, plan);
    this.room = new RoomWords(kept.plan(), plan, brief);
    this.out = new OutOfUse(start.week().input().shop(), brief, start.state().atMin());
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
    PieceFlow flow = new PieceFlow(match, lots);
    for (LoadMatch.Pair pair : match.pairs()) {
      if (fixed.contains(pair.is().id())) {
        stayed(pair.was(), pair.is());
      } else {
        pair(pair, flow.cameOnto(pair.is().id()), flow.wentFrom(pair.was().id()));
      }
    }
    match.added().forEach(is -> added(is, flow.cameOnto(is.id())));
    match.gone().forEach(was -> gone(was, flow.wentFrom(was.id())));
    onNoLoad();
    lines.sort(
        Comparator.comparing((ChangeList.Line l) -> l.load().isEmpty())
            .thenComparingInt(ChangeList.Line::startMin)
            .thenComparing(ChangeList.Line::load));
    return new ChangeList(
        lines, held(), moved, minutes, ColourOrder.reordered(kept.plan(), plan, lots, fixed));
  }

  private List<String> held() {
    List<String> held = new ArrayList<>();
    held.addAll(HeldLoad.lines(start.stopped(plan)));
    start.week().held().stream()
        .filter(h -> h.gate().equals("rework-strip"))
        .map(h -> h.jobId() + " " + h.name() + ": " + h.words() + "; " + h.opens())
        .forEach(held::add);
    return held;
  }

  private void stayed(LoadMatch.Spot was, LoadMatch.Spot is) {
    boolean waits = StrandedLoads.waits(brief, is.batch(), is.load());
    boolean waited = StrandedLoads.waits(kept.brief(), was.batch(), was.load());
    if (waits && waited) {
      return;
    }
    if (Math.abs(is.lastMin() - was.lastMin()) > Goals.SWING_MIN && (waits || waited)) {
      line(
          waits ? ChangeList.Kind.LATER : ChangeList.Kind.CHANGED,
          is,
          waited ? "hung and waited" : "finished " + DayWords.of(was.lastMin()),
          waits ? "not this week" : "goes on, finished " + DayWords.of(is.lastMin()),
          waits ? "it hangs and waits: see what is held" : "what it waited for is there",
          tellers.of(is.load().lotIds(), ChangeList.Kind.LATER),
          "");
    } else if (is.lastMin() - was.lastMin() > Goals.SWING_MIN) {
      boolean recalled = start.forced().containsKey(is.id());
      line(
          ChangeList.Kind.LATER,
          is,
          "finished " + DayWords.of(was.lastMin()),
          "finished " + DayWords.of(is.lastMin()),
          recalled ? reason(is) : "it hangs and waits" + out.before(is.batch(), is.load()),
          tellers.of(is.load().lotIds(), ChangeList.Kind.LATER),
          recalled ? version : "");
    }
  }

  private String reason(LoadMatch.Spot was) {
    String forced = start.forced().get(was.id());
    return forced != null
        ? forced + "; its sheet is out, take it back"
        : start.reasons().getOrDefault(was.id(), "");
  }

  /** A load that is still there: elsewhere, with other pieces, on another carrier, or as it was. */
  private void pair(LoadMatch.Pair pair, List<PieceFlow.Flow> came, List<PieceFlow.Flow> went) {
    LoadMatch.Spot was = pair.was();
    LoadMatch.Spot is = pair.is();
    int apart = Math.abs(is.batch().startMin() - was.batch().startMin());
    int hangs = Math.abs(is.firstMin() - was.firstMin());
    boolean stands = is.stands(was) && hangs <= Goals.HANG_SWING_MIN && is.id().equals(was.id());
    boolean samePieces = came.isEmpty() && went.isEmpty();
    String otherwise = otherWork(is);
    boolean sameWay = words.details(is, was).isEmpty() && otherwise.isEmpty();
    if (stands && samePieces && sameWay) {
      return;
    }
    if (!stands) {
      moved++;
      minutes += is.stands(was) ? hangs : apart;
    }
    ChangeList.Kind kind = kind(stands, came, went);
    String before = words.place(was, is);
    String after = words.place(is, was) + otherwise;
    Set<String> tell = new LinkedHashSet<>();
    if (!samePieces) {
      before += "; " + words.pieces(was.load().lotIds());
      after += "; " + joined(came, went);
      losers(was, went, tell);
    }
    boolean ovenOnly = stands && samePieces && ChangeWords.sameCarrier(was, is);
    tell.addAll(
        ovenOnly ? tellers.atTheMachine(is.load().lotIds()) : tellers.of(is.load().lotIds(), kind));
    String why = samePieces ? reason(was) : start.forced().getOrDefault(was.id(), "");
    boolean found = why.isEmpty() && kind == ChangeList.Kind.MOVED;
    line(kind, is, before, after, found ? room.of(was, is) : why, tell, version);
  }

  /** What its pieces get now and did not before; empty where it is the same. */
  private String otherWork(LoadMatch.Spot is) {
    for (String id : is.load().lotIds()) {
      Finish before = finishes.get(id);
      Lot now = lots.get(id);
      if (before == null || now == null || before.key().equals(now.finish().key())) {
        continue;
      }
      if (!before.name().equals(now.finish().name())) {
        return ", " + now.finish().name();
      }
      if (now.finish().kind() == FinishKind.ZINC) {
        return now.finish().key().contains(REACTIVE)
            ? ", reactive steel: thick, dark coating"
            : ", ordinary steel";
      }
    }
    return "";
  }

  private static ChangeList.Kind kind(
      boolean stands, List<PieceFlow.Flow> came, List<PieceFlow.Flow> went) {
    if (came.isEmpty() && went.isEmpty()) {
      return stands ? ChangeList.Kind.CHANGED : ChangeList.Kind.MOVED;
    }
    if (came.isEmpty()) {
      return ChangeList.Kind.SMALLER;
    }
    return went.isEmpty() ? ChangeList.Kind.LARGER : ChangeList.Kind.CHANGED;
  }

  private String joined(List<PieceFlow.Flow> came, List<PieceFlow.Flow> went) {
    List<String> parts = new ArrayList<>();
    for (PieceFlow.Flow flow : came) {
      String from =
          flow.load().isEmpty()
              ? fate.whence(words.lot(flow.work()), flow.pieces()).sofar()
              : "from " + flow.load();
      parts.add("more: " + words.pieces(flow.work(), flow.pieces()) + ", " + from);
    }
    for (PieceFlow.Flow flow : went) {
      parts.add("less: " + words.pieces(flow.work(), flow.pieces()) + ", " + whereTo(flow));
    }
    return String.join("; ", parts);
  }

  private String whereTo(PieceFlow.Flow flow) {
    return flow.load().isEmpty()
        ? fate.why(words.lot(flow.work()), flow.pieces())
        : "now on " + flow.load();
  }

  /** Those who hear of pieces that are on no load any more. */
  private void losers(LoadMatch.Spot was, List<PieceFlow.Flow> went, Set<String> tell) {
    for (PieceFlow.Flow flow : went) {
      if (flow.load().isEmpty()) {
        List<String> ids =
            was.load().lotIds().stream()
                .filter(id -> LotNames.work(id).equals(flow.work()))
                .toList();
        tell.addAll(tellers.of(ids, ChangeList.Kind.DROPPED));
      }
    }
  }

  /** A load that was not there: its pieces hung otherwise, or were not in the plan at all. */
  private void added(LoadMatch.Spot is, List<PieceFlow.Flow> came) {
    List<PieceFlow.Flow> found = came.stream().filter(f -> !f.load().isEmpty()).toList();
    ChangeList.Kind kind = found.isEmpty() ? ChangeList.Kind.NEW : ChangeList.Kind.SPLIT;
    Set<String> before = new LinkedHashSet<>();
    Set<String> sources = new LinkedHashSet<>();
    found.forEach(f -> sources.add(f.load()));
    if (!sources.isEmpty()) {
      before.add("on " + String.join(", ", sources));
    }
    for (PieceFlow.Flow flow : came) {
      if (flow.load().isEmpty()) {
        String whence = fate.whence(words.lot(flow.work()), flow.pieces()).said();
        before.add(
            found.isEmpty() && came.size() == 1
                ? whence
                : words.pieces(flow.work(), flow.pieces()) + ": " + whence);
      }
    }
    if (!found.isEmpty()) {
      moved++;
    }
    line(
        kind,
        is,
        String.join("; ", before),
        words.place(is),
        "",
        tellers.of(is.load().lotIds(), kind),
        version);
  }

  /** A load that is not there any more: its pieces are on others, or on none. */
  private void gone(LoadMatch.Spot was, List<PieceFlow.Flow> went) {
    List<PieceFlow.Flow> lost = went.stream().filter(f -> f.load().isEmpty()).toList();
    Set<String> to = new LinkedHashSet<>();
    went.stream().map(PieceFlow.Flow::load).filter(l -> !l.isEmpty()).forEach(to::add);
    List<String> after = new ArrayList<>();
    for (PieceFlow.Flow flow : lost) {
      String why = fate.why(words.lot(flow.work()), flow.pieces());
      boolean only = lost.size() == 1 && to.isEmpty();
      after.add(only ? why : words.pieces(flow.work(), flow.pieces()) + ": " + why);
    }
    if (!to.isEmpty()) {
      after.add((lost.isEmpty() ? "its pieces" : "the rest") + " on " + String.join(", ", to));
    }
    ChangeList.Kind kind =
        !lost.isEmpty()
            ? ChangeList.Kind.DROPPED
            : to.size() > 1 ? ChangeList.Kind.SPLIT : ChangeList.Kind.MERGED;
    Set<String> tell = new LinkedHashSet<>();
    losers(was, lost, tell);
    tell.addAll(tellers.crews(was.load().lotIds()));
    line(
        kind,
        was,
        words.place(was),
        String.join("; ", after) + "; sheet void",
        start.forced().getOrDefault(was.id(), ""),
        tell,
        "");
  }

  /** Orders that find no place, and gates newly shut, where no load was there to speak of. */
  private void onNoLoad() {
    fate.untoldOut()
        .forEach(
            (lot, pieces) ->
                noLoad(
                    ChangeList.Kind.LEFT_OUT,
                    words.pieces(LotNames.work(lot.id()), pieces),
                    fate.whyOut(lot),
                    tellers.of(List.of(lot.id()), ChangeList.Kind.LEFT_OUT)));
    for (Map.Entry<Held, Integer> each : fate.untoldHeld().entrySet()) {
      Held held = each.getKey();
      if (!held.gate().equals("rework-strip")) {
        noLoad(
            ChangeList.Kind.HELD,
            each.getValue() + " x " + held.name() + " (" + held.jobId() + ")",
            held.words() + "; " + held.opens(),
            tellers.of(held));
      }
    }
  }

  private void noLoad(ChangeList.Kind kind, String what, String after, Set<String> tell) {
    lines.add(
        new ChangeList.Line(
            kind,
            "",
            what,
            "on no load",
            after,
            "",
            String.join(", ", tell),
            "",
            start.state().atMin()));
  }

  private void line(
      ChangeList.Kind kind,
      LoadMatch.Spot spot,
      String before,
      String after,
      String reason,
      Set<String> tell,
      String sheet) {
    lines.add(
        new ChangeList.Line(
            kind,
            spot.id(),
            words.pieces(spot.load().lotIds()),
            before,
            after,
            reason,
            String.join(", ", tell),
            sheet,
            spot.batch().startMin()));
  }
}
