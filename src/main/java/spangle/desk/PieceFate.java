package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.intake.event.Happened.PartKey;
import spangle.plan.Brief;
import spangle.plan.Held;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.Scrapped;
import spangle.plan.event.EventKind;
import spangle.plan.event.LotNames;
import spangle.plan.json.PlanFile;

/**
 * Why pieces that were on a load are on none now, and where pieces that come onto one were:
 * counted, so that of ten pieces four may be left out and six not here. What has been told once is
 * not told again.
 */
final class PieceFate {
  private final PlanFile kept;
  private final ReplanStart start;
  private final Set<String> leftOut = new HashSet<>();
  private final Map<String, Integer> out = new LinkedHashMap<>();
  private final Map<String, String> whyOut = new HashMap<>();
  private final Map<String, Integer> wasOut = new HashMap<>();
  private final Map<String, String> whyWasOut = new HashMap<>();
  private final Map<String, Integer> shut = new LinkedHashMap<>();
  private final Map<String, Integer> opened = new HashMap<>();

  PieceFate(PlanFile kept, ReplanStart start, Plan plan) {
    this.kept = kept;
    this.start = start;
    plan.leftOut().forEach(l -> leftOut.add(l.lotId()));
    Map<String, Integer> before = leftOut(kept.brief(), kept.plan(), whyWasOut);
    Map<String, Integer> now = leftOut(start.week().brief(), plan, whyOut);
    now.forEach((work, n) -> grown(out, work, n - before.getOrDefault(work, 0)));
    before.forEach((work, n) -> grown(wasOut, work, n - now.getOrDefault(work, 0)));
    Map<String, Integer> shutBefore = new HashMap<>();
    kept.gates().stream()
        .filter(g -> !g.open())
        .forEach(
            g -> shutBefore.merge(gate(g.jobId(), g.partId(), g.code()), g.pieces(), Integer::sum));
    Map<String, Integer> shutNow = new LinkedHashMap<>();
    start.week().held().forEach(h -> shutNow.merge(gate(h), h.pieces(), Integer::sum));
    shutNow.forEach((gate, n) -> grown(shut, gate, n - shutBefore.getOrDefault(gate, 0)));
    shutBefore.forEach((gate, n) -> grown(opened, gate, n - shutNow.getOrDefault(gate, 0)));
  }

  private static void grown(Map<String, Integer> into, String key, int more) {
    if (more > 0) {
      into.put(key, more);
    }
  }

  private static String gate(String job, String part, String code) {
    return job + '\n' + part + '\n' + code;
  }

  private static String gate(Held held) {
    return gate(held.jobId(), held.partId(), held.gate());
  }

  private static Map<String, Integer> leftOut(Brief brief, Plan plan, Map<String, String> why) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    Map<String, Lot> lots = new HashMap<>();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    for (LeftOut left : plan.leftOut()) {
      Lot lot = lots.get(left.lotId());
      if (lot != null) {
        pieces.merge(LotNames.work(lot.id()), lot.pieces(), Integer::sum);
        why.putIfAbsent(LotNames.work(lot.id()), left.reason() + PartFate.earliest(left));
      }
    }
    return pieces;
  }

  private static int take(Map<String, Integer> from, String key, int most) {
    int taken = Math.min(most, from.getOrDefault(key, 0));
    from.computeIfPresent(key, (k, n) -> n > taken ? n - taken : null);
    return taken;
  }

  /** Why pieces of a lot's part and step are on no load any more. */
  String why(Lot lot, int pieces) {
    if (cancelled(lot)) {
      return "cancelled";
    }
    List<String> reasons = new ArrayList<>();
    String work = LotNames.work(lot.id());
    int left = pieces;
    int none = take(out, work, left);
    left -= none;
    if (none > 0) {
      reasons.add(part(none, pieces) + "left out: " + whyOut.getOrDefault(work, ""));
    }
    for (Held held : start.week().held()) {
      if (left > 0 && held.jobId().equals(lot.jobId()) && held.partId().equals(lot.partId())) {
        int stopped = take(shut, gate(held), left);
        left -= stopped;
        if (stopped > 0) {
          reasons.add(part(stopped, pieces) + new Whence(shut(held.gate()), held.words()).said());
        }
      }
    }
    if (left > 0) {
      reasons.add(part(left, pieces) + elsewhere(lot));
    }
    return String.join("; ", reasons);
  }

  private static String part(int some, int all) {
    return some == all ? "" : some + " ";
  }

  private String elsewhere(Lot lot) {
    boolean ordered =
        start.week().input().jobs().stream()
            .filter(j -> j.id().equals(lot.jobId()))
            .flatMap(j -> j.parts().stream())
            .anyMatch(p -> p.id().equals(lot.partId()));
    return ordered
        ? "not to be worked any more by what is ordered and reported now"
        : "the job files do not name it any more";
  }

  private boolean cancelled(Lot lot) {
    return start.happened().cancelled().contains(new PartKey(lot.jobId(), lot.partId()));
  }

  /** Where pieces were that come onto a load from none. */
  Whence whence(Lot lot, int pieces) {
    if (LotNames.rework(lot)) {
      return rejected(lot);
    }
    String work = LotNames.work(lot.id());
    if (take(wasOut, work, pieces) > 0) {
      return new Whence(Whence.How.LEFT_OUT, whyWasOut.getOrDefault(work, ""));
    }
    return kept.gates().stream()
        .filter(g -> !g.open() && g.jobId().equals(lot.jobId()) && g.partId().equals(lot.partId()))
        .filter(g -> take(opened, gate(g.jobId(), g.partId(), g.code()), pieces) > 0)
        .map(g -> new Whence(shut(g.code()), g.words()))
        .findFirst()
        .orElseGet(() -> Whence.of(Whence.How.UNPLANNED));
  }

  private static Whence.How shut(String gate) {
    return Scrapped.gate(gate) ? Whence.How.SCRAPPED : Whence.How.HELD;
  }

  private Whence rejected(Lot rework) {
    boolean stripped =
        start.week().input().events().events().stream()
            .filter(e -> e.number() == LotNames.eventOf(rework))
            .findFirst()
            .filter(e -> e.kind() == EventKind.STRIPPED)
            .isPresent();
    return Whence.of(stripped ? Whence.How.STRIPPED : Whence.How.REJECTED);
  }

  /** Pieces newly left out that were on no load before, by part: last steps only. */
  Map<Lot, Integer> untoldOut() {
    Map<Lot, Integer> untold = new LinkedHashMap<>();
    for (Lot lot : start.week().brief().lots()) {
      boolean own = lot.lastLeg() && leftOut.contains(lot.id());
      int pieces = own ? out.getOrDefault(LotNames.work(lot.id()), 0) : 0;
      if (pieces > 0) {
        untold.put(lot, pieces);
        out.remove(LotNames.work(lot.id()));
      }
    }
    return untold;
  }

  /** Why pieces of that part and step are left out. */
  String whyOut(Lot lot) {
    return whyOut.getOrDefault(LotNames.work(lot.id()), "");
  }

  /** Gates newly shut on pieces that were on no load before, how many at each. */
  Map<Held, Integer> untoldHeld() {
    Map<Held, Integer> untold = new LinkedHashMap<>();
    for (Held held : start.week().held()) {
      Optional.ofNullable(shut.remove(gate(held))).ifPresent(n -> untold.put(held, n));
    }
    return untold;
  }
}
