package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import spangle.audit.Audit;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.PlanFile;
import spangle.solve.Freedom;
import spangle.solve.Inserted;
import spangle.solve.Inserter;

/**
 * Puts pieces of a plan anew: as the week is, then with one thing at a time out of the way. What
 * they win is counted from the plan the reader holds, and said only of a whole plan the audit has
 * seen.
 */
final class WhySearch {
  /** A gain shorter than this holds nobody. */
  static final int WORTH_SAYING_MIN = 15;

  private final PlanFile file;
  private final Brief brief;
  private final Plan plan;

  /** The pieces, a list of legs for each lot. */
  private final List<List<Lot>> chains;

  private final Set<String> ids = new HashSet<>();
  private final OptionalInt announced;
  private final Plan without;

  /** Rules the plan the reader holds breaks already. */
  private final Set<String> broken = new HashSet<>();

  /**
   * A question about some pieces.
   *
   * @param chains their lots, first leg first
   * @param announced when the plan has the last of them finished; empty where it leaves them out
   */
  WhySearch(PlanFile file, List<List<Lot>> chains, OptionalInt announced) {
    this.file = file;
    this.brief = file.brief();
    this.plan = file.plan();
    this.chains = chains;
    this.announced = announced;
    chains.forEach(chain -> chain.forEach(lot -> ids.add(lot.id())));
    this.without = without();
    Audit.of(brief, plan).forEach(f -> broken.add(f.rule()));
  }

  /** What was found. */
  record Found(Optional<Why.Room> room, List<Why.Hold> holds, List<String> lets) {}

  /** Pieces that found a place, and when the last of them are finished. */
  private record Placed(int pieces, int endMin, Plan plan) {}

  Found find() {
    Optional<Placed> now = placed(brief, false);
    boolean sooner = better(now, announcedPlace()) && proven(brief, now);
    Optional<Placed> base = sooner ? now : announcedPlace();
    Set<String> tried = new TreeSet<>();
    Map<Relaxed, Placed> helps = new LinkedHashMap<>();
    for (Relaxed relaxed : Relaxed.all(brief, chains)) {
      tried.add(relaxed.what());
      Optional<Placed> then = placed(relaxed.brief(), false);
      if (better(then, base) && proven(relaxed.brief(), then)) {
        add(relaxed, then.get(), base, helps);
      }
    }
    List<Why.Hold> holds = new ArrayList<>();
    helps.forEach((relaxed, then) -> hold(relaxed, then, base).ifPresent(holds::add));
    others(base, holds);
    tried.add("other-work");
    holds.sort(Comparator.comparingInt((Why.Hold h) -> h.endMin().orElse(Integer.MAX_VALUE)));
    Set<String> held = new HashSet<>();
    holds.forEach(h -> held.add(h.what()));
    if (holds.isEmpty() && base.isEmpty()) {
      String several = "no single thing lets it in: several hold it at once";
      holds.add(Why.Hold.without("several", several));
    }
    return new Found(
        sooner ? now.map(this::room) : Optional.empty(), holds, WhyWords.notBy(tried, held));
  }

  /** Of things that overlap only the narrowest that explains at least half of it is said. */
  private void add(
      Relaxed relaxed, Placed then, Optional<Placed> base, Map<Relaxed, Placed> helps) {
    List<Relaxed> akin =
        helps.keySet().stream()
            .filter(r -> r.groups().stream().anyMatch(relaxed.groups()::contains))
            .toList();
    boolean said =
        akin.stream().anyMatch(r -> 2 * won(helps.getOrDefault(r, then), base) >= won(then, base));
    if (!said) {
      akin.forEach(helps::remove);
      helps.put(relaxed, then);
    }
  }

  /** Minutes won; pieces where the plan has none of them. */
  private static long won(Placed then, Optional<Placed> base) {
    return base.isEmpty() ? then.pieces() : base.get().endMin() - then.endMin();
  }

  private Optional<Placed> announcedPlace() {
    return announced.isEmpty()
        ? Optional.empty()
        : Optional.of(new Placed(pieces(), announced.getAsInt(), plan));
  }

  private int pieces() {
    return chains.stream().mapToInt(chain -> chain.get(0).pieces()).sum();
  }

  private static boolean better(Optional<Placed> then, Optional<Placed> base) {
    if (then.isEmpty() || base.isEmpty()) {
      return then.isPresent();
    }
    int more = then.get().pieces() - base.get().pieces();
    return more > 0 || (more == 0 && base.get().endMin() - then.get().endMin() >= WORTH_SAYING_MIN);
  }

  /** One lot after the other, as many as find a place. */
  private Optional<Placed> placed(Brief week, boolean datesMaySlip) {
    Plan at = without;
    Plan word = plan;
    int pieces = 0;
    Set<String> in = new HashSet<>();
    for (List<Lot> chain : chains) {
      List<String> lotIds = chain.stream().map(Lot::id).toList();
      Inserter inserter = new Inserter(week, at);
      Optional<Inserted> made =
          datesMaySlip
              ? inserter.insert(lotIds, Freedom.DATES_MAY_SLIP)
              : inserter.soonest(word, lotIds);
      if (made.isPresent()) {
        at = made.get().plan();
        word = at;
        pieces += chain.get(0).pieces();
        in.add(last(chain).id());
      }
    }
    Map<String, Integer> ends = at.lotEnds();
    int end = in.stream().mapToInt(id -> ends.getOrDefault(id, 0)).max().orElse(0);
    return in.isEmpty() ? Optional.empty() : Optional.of(new Placed(pieces, end, at));
  }

  /** Whether the whole plan keeps every rule that the plan the reader holds keeps. */
  private boolean proven(Brief week, Optional<Placed> placed) {
    return placed.isPresent()
        && Audit.of(week, placed.get().plan()).stream().allMatch(f -> broken.contains(f.rule()));
  }

  private void others(Optional<Placed> base, List<Why.Hold> holds) {
    if (holds.stream().anyMatch(h -> h.what().equals("kit"))) {
      return;
    }
    Optional<Placed> then = placed(brief, true);
    if (better(then, base) && proven(brief, then)) {
      String who = slips(then.get().plan());
      String words = "the dates of others (" + who + "); if they may slip";
      if (!who.isEmpty()) {
        holds.add(hold("other-work", words, then.get(), base));
      }
    }
  }

  /** Parts and kits of others that are late by it, in words; empty where nobody is. */
  private String slips(Plan after) {
    PlanFile then = file.with(brief, after);
    Lot own = chains.get(0).get(0);
    Stream<String> parts =
        PartChange.of(PartFate.of(file), PartFate.of(then), 1).stream()
            .filter(c -> c.lateNow() && (c.kind().equals("later") || c.kind().equals("less")))
            .filter(c -> !(c.jobId().equals(own.jobId()) && c.partId().equals(own.partId())))
            .map(c -> c.jobId() + " " + c.label());
    List<String> who =
        Stream.concat(parts, KitDelay.of(file, then).stream().map(KitDelay::name))
            .distinct()
            .toList();
    return WhyWords.some(who, 5);
  }

  /** Dates of kits hold only where a kit would miss one. */
  private Optional<Why.Hold> hold(Relaxed relaxed, Placed then, Optional<Placed> base) {
    boolean kit = relaxed.what().equals("kit");
    String who = kit ? slips(then.plan()) : "";
    if (kit && who.isEmpty()) {
      return Optional.empty();
    }
    String words = relaxed.words() + (kit ? " (" + who + ")" : "") + "; " + relaxed.without();
    return Optional.of(hold(relaxed.what(), words, then, base));
  }

  private Why.Hold hold(String what, String words, Placed then, Optional<Placed> base) {
    if (announced.isEmpty()) {
      String done = WhyWords.some(then.pieces(), pieces()) + "done " + DayWords.of(then.endMin());
      return new Why.Hold(
          what, words + ", " + done, OptionalInt.of(then.endMin()), OptionalInt.empty());
    }
    int sooner = announced.getAsInt() - then.endMin();
    int beyond = base.map(Placed::endMin).orElse(0) - then.endMin();
    String done =
        "done "
            + WhyWords.instead(then.endMin(), announced.getAsInt())
            + " ("
            + DayWords.length(sooner)
            + " sooner"
            + (beyond < sooner ? ", " + DayWords.length(beyond) + " of it beyond that room" : "")
            + ")";
    return new Why.Hold(
        what, words + ", " + done, OptionalInt.of(then.endMin()), OptionalInt.of(sooner));
  }

  private Why.Room room(Placed now) {
    List<String> costs = WhyWords.costs(plan.figures(), now.plan().figures());
    boolean gains = now.plan().figures().goal() < plan.figures().goal();
    String done =
        announced.isEmpty()
            ? WhyWords.some(now.pieces(), pieces()) + "done " + DayWords.of(now.endMin())
            : WhyWords.instead(now.endMin(), announced.getAsInt())
                + " ("
                + DayWords.length(announced.getAsInt() - now.endMin())
                + " sooner than the plan has it)";
    boolean inTime = announced.isPresent() && announced.getAsInt() <= last(chains.get(0)).dueMin();
    return new Why.Room(
        done + ", every other date kept; " + WhyWords.verdict(gains, inTime, costs),
        now.endMin(),
        gains ? List.of() : costs);
  }

  private static Lot last(List<Lot> chain) {
    return chain.get(chain.size() - 1);
  }

  private Plan without() {
    List<PlannedBatch> kept = new ArrayList<>();
    for (PlannedBatch batch : plan.batches()) {
      List<PlannedLoad> left = new ArrayList<>();
      for (PlannedLoad load : batch.loads()) {
        List<String> others = load.lotIds().stream().filter(id -> !ids.contains(id)).toList();
        if (!others.isEmpty()) {
          left.add(load.carrying(others));
        }
      }
      if (!left.isEmpty()) {
        kept.add(batch.with(left));
      }
    }
    return new Plan(kept, plan.leftOut(), plan.figures(), plan.solve());
  }
}
