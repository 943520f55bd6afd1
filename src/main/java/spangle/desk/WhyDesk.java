package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.plan.Brief;
import spangle.plan.Kit;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.Gate;
import spangle.plan.json.PlanFile;
import spangle.solve.Freedom;
import spangle.solve.Inserted;
import spangle.solve.Inserter;

/**
 * Says why a job is where it is: its last lot is taken out of the plan and put anew, first as the
 * week is, then with one thing at a time out of the way. What lets it be finished sooner is what
 * holds it. Everybody else's dates are kept throughout.
 */
public final class WhyDesk {
  /** A gain shorter than this holds nobody. */
  private static final int WORTH_SAYING_MIN = 15;

  private final PlanFile file;
  private final Brief brief;
  private final Plan plan;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, PlannedLoad> loads = new HashMap<>();
  private final Map<String, PlannedBatch> batches = new HashMap<>();

  private WhyDesk(PlanFile file) {
    this.file = file;
    this.brief = file.brief();
    this.plan = file.plan();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        for (String id : load.lotIds()) {
          loads.put(id, load);
          batches.put(id, batch);
        }
      }
    }
  }

  /** The jobs a plan knows, those behind gates too. */
  public static List<String> jobs(PlanFile file) {
    Set<String> jobs = new TreeSet<>();
    file.brief().lots().forEach(l -> jobs.add(l.jobId()));
    file.gates().forEach(g -> jobs.add(g.jobId()));
    return List.copyOf(jobs);
  }

  /**
   * The reasons for every part of a job.
   *
   * @param job a job, or job/part
   */
  public static List<Why> why(PlanFile file, String job) {
    WhyDesk desk = new WhyDesk(file);
    Map<String, List<Lot>> parts = new TreeMap<>();
    for (Lot lot : file.brief().lots()) {
      if (asked(job, lot.jobId(), lot.partId()) && lot.lastLeg()) {
        parts
            .computeIfAbsent(WeekIndex.key(lot.jobId(), lot.partId()), k -> new ArrayList<>())
            .add(lot);
      }
    }
    List<Why> whys = new ArrayList<>();
    parts.values().forEach(part -> whys.add(desk.part(part)));
    Set<String> shut = new LinkedHashSet<>();
    for (Gate gate : file.gates()) {
      if (!gate.open() && asked(job, gate.jobId(), gate.partId())) {
        shut.add(WeekIndex.key(gate.jobId(), gate.partId()));
      }
    }
    shut.stream().filter(key -> !parts.containsKey(key)).forEach(k -> whys.add(desk.gated(k)));
    return whys;
  }

  private static boolean asked(String job, String jobId, String partId) {
    return job.equals(jobId) || job.equals(WeekIndex.key(jobId, partId));
  }

  private Why gated(String key) {
    List<Gate> gates =
        file.gates().stream()
            .filter(g -> !g.open() && WeekIndex.key(g.jobId(), g.partId()).equals(key))
            .toList();
    Gate first = gates.get(0);
    return new Why(
        first.jobId(),
        first.partId(),
        first.jobId() + " " + first.partId(),
        first.pieces() + " pieces are not in the plan: a gate is shut",
        OptionalInt.empty(),
        0,
        gates.stream()
            .map(
                g ->
                    new Why.Hold(
                        "gate",
                        g.words() + " (" + g.whoAnswers() + " must answer)",
                        OptionalInt.empty()))
            .toList(),
        List.of(),
        List.of("No due date opens a gate."));
  }

  private Why part(List<Lot> part) {
    Lot last =
        part.stream()
            .max(Comparator.comparingInt(this::rank).thenComparingInt(this::earliest))
            .orElseThrow();
    List<Lot> legs = legs(last);
    OptionalInt end = end(last);
    List<Why.Hold> holds = new ArrayList<>();
    List<String> lets = new ArrayList<>();
    List<String> notes = new ArrayList<>(kits(last));
    boolean underWay = end.isPresent() && frozen(last);
    if (underWay) {
      notes.add("it has been released or started: it stays where it is");
    } else {
      tryAll(last, legs, end, holds, lets, notes);
    }
    return new Why(
        last.jobId(),
        last.partId(),
        last.jobId() + " " + last.label(),
        place(part, last, end),
        end,
        last.dueMin(),
        holds,
        lets,
        notes);
  }

  /** The last of a part's lots; one that is left out comes after all others. */
  private int rank(Lot lot) {
    return end(lot).orElse(Integer.MAX_VALUE);
  }

  /** Of lots left out the one with the latest earliest time, or with none at all. */
  private int earliest(Lot lot) {
    return plan.leftOut().stream()
        .filter(o -> o.lotId().equals(lot.id()))
        .mapToInt(o -> o.earliestMin().orElse(Integer.MAX_VALUE))
        .max()
        .orElse(0);
  }

  private List<Lot> legs(Lot last) {
    List<Lot> legs = new ArrayList<>(List.of(last));
    Lot at = last;
    while (at.after().isPresent() && lots.containsKey(at.after().get().lotId())) {
      at = lots.getOrDefault(at.after().get().lotId(), at);
      legs.add(0, at);
    }
    return legs;
  }

  private OptionalInt end(Lot lot) {
    PlannedLoad load = loads.get(lot.id());
    PlannedBatch batch = batches.get(lot.id());
    if (load == null || batch == null) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(
        load.visits().stream()
            .mapToInt(PlannedLoad.PlannedVisit::endMin)
            .reduce(batch.endMin(), Math::max));
  }

  private boolean frozen(Lot lot) {
    return brief.frozen().stream()
        .flatMap(b -> b.loads().stream())
        .anyMatch(l -> l.lotIds().contains(lot.id()));
  }

  private String place(List<Lot> part, Lot last, OptionalInt end) {
    int pieces = part.stream().mapToInt(Lot::pieces).sum();
    if (end.isEmpty()) {
      int out = part.stream().filter(l -> end(l).isEmpty()).mapToInt(Lot::pieces).sum();
      String reason =
          legs(last).stream()
              .flatMap(l -> plan.leftOut().stream().filter(o -> o.lotId().equals(l.id())))
              .map(LeftOut::reason)
              .findFirst()
              .orElse("not planned");
      String earliest =
          plan.leftOut().stream()
              .filter(o -> o.lotId().equals(last.id()))
              .map(PartFate::earliest)
              .findFirst()
              .orElse("");
      return (part.size() > 1 ? out + " of " + pieces + " pieces are " : "")
          + "not in this week: "
          + reason
          + earliest;
    }
    String of = part.size() > 1 ? last.pieces() + " of " + pieces + " pieces, the last: " : "";
    PlannedLoad load = loads.get(last.id());
    PlannedBatch batch = batches.get(last.id());
    int hung =
        load == null || batch == null
            ? 0
            : load.visits().stream()
                .mapToInt(PlannedLoad.PlannedVisit::startMin)
                .min()
                .orElse(batch.startMin());
    String late =
        end.getAsInt() > last.dueMin()
            ? "late by " + DayWords.length(end.getAsInt() - last.dueMin())
            : "in time";
    return String.format(
        Locale.ROOT,
        "%sload %s from %s, done %s; due %s, %s",
        of,
        load == null ? "?" : load.id(),
        DayWords.of(hung),
        DayWords.of(end.getAsInt()),
        DayWords.due(last.dueMin()),
        late);
  }

  private List<String> kits(Lot lot) {
    List<String> words = new ArrayList<>();
    for (Kit kit : brief.kits()) {
      if (lot.kitIds().contains(kit.id())) {
        words.add("the kit " + kit.name() + " waits for it; due " + DayWords.due(kit.dueMin()));
      }
    }
    return words;
  }

  private void tryAll(
      Lot last,
      List<Lot> legs,
      OptionalInt end,
      List<Why.Hold> holds,
      List<String> lets,
      List<String> notes) {
    List<String> ids = legs.stream().map(Lot::id).toList();
    Plan without = without(Set.copyOf(ids));
    OptionalInt asIs = new Inserter(brief, without).soonest(plan, ids);
    OptionalInt base = sooner(asIs, end);
    if (end.isPresent() && asIs.isPresent() && gain(asIs, end) >= WORTH_SAYING_MIN) {
      notes.add(
          "it could be done "
              + DayWords.of(asIs.getAsInt())
              + " with everybody's dates kept; the plan has put other things first: fewer"
              + " changes, fuller loads");
    }
    for (Relaxed relaxed : Relaxed.all(brief, legs)) {
      OptionalInt then = new Inserter(relaxed.brief(), without).soonest(plan, ids);
      if (then.isPresent() && gain(then, base) >= WORTH_SAYING_MIN) {
        holds.add(new Why.Hold(relaxed.what(), words(relaxed, then, base), then));
      } else {
        lets.add(relaxed.words());
      }
    }
    others(ids, without, base, holds, lets);
    if (holds.isEmpty() && end.isEmpty()) {
      holds.add(
          new Why.Hold(
              "room", "no single thing lets it in: several hold it at once", OptionalInt.empty()));
    }
    holds.sort(Comparator.comparingInt((Why.Hold h) -> h.endMin().orElse(Integer.MAX_VALUE)));
    if (last.dueMin() <= last.readyMin()) {
      notes.add("it is due before it is ready");
    }
  }

  private void others(
      List<String> ids, Plan without, OptionalInt base, List<Why.Hold> holds, List<String> lets) {
    Optional<Inserted> first = new Inserter(brief, without).insert(ids, Freedom.DATES_MAY_SLIP);
    OptionalInt then = first.isEmpty() ? OptionalInt.empty() : OptionalInt.of(first.get().endMin());
    if (first.isPresent() && gain(then, base) >= WORTH_SAYING_MIN) {
      Map<String, PartFate> now = PartFate.of(file);
      Map<String, PartFate> after = PartFate.of(as(first.get().plan()));
      List<String> slips =
          PartChange.of(now, after, 1).stream()
              .filter(c -> c.kind().equals("later") && c.lateNow())
              .filter(c -> ids.stream().noneMatch(id -> id.startsWith(c.jobId() + "/")))
              .map(c -> c.jobId() + " " + c.label())
              .distinct()
              .limit(5)
              .toList();
      String who = slips.isEmpty() ? "work already announced" : String.join(", ", slips);
      holds.add(
          new Why.Hold(
              "other-work",
              "the dates of others ("
                  + who
                  + "); if they may slip, done "
                  + DayWords.of(then.getAsInt())
                  + sooner(then.getAsInt(), base),
              then));
    } else {
      lets.add("the dates of others");
    }
  }

  private PlanFile as(Plan other) {
    return new PlanFile(
        file.format(),
        file.version(),
        file.weekFolder(),
        file.inputs(),
        file.overlay(),
        file.gates(),
        brief,
        other,
        List.of(),
        file.estimates());
  }

  private static String words(Relaxed relaxed, OptionalInt then, OptionalInt base) {
    return relaxed.words()
        + "; "
        + relaxed.without()
        + ", done "
        + DayWords.of(then.getAsInt())
        + sooner(then.getAsInt(), base);
  }

  private static String sooner(int then, OptionalInt base) {
    return base.isEmpty() ? "" : " (" + DayWords.length(base.getAsInt() - then) + " sooner)";
  }

  private static OptionalInt sooner(OptionalInt a, OptionalInt b) {
    return a.isPresent() && (b.isEmpty() || a.getAsInt() < b.getAsInt()) ? a : b;
  }

  /** Minutes won; without an end to compare with, anything is a gain. */
  private static int gain(OptionalInt then, OptionalInt base) {
    if (then.isEmpty()) {
      return 0;
    }
    return base.isEmpty() ? Integer.MAX_VALUE : base.getAsInt() - then.getAsInt();
  }

  private Plan without(Set<String> ids) {
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
