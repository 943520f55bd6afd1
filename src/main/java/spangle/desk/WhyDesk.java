package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import spangle.plan.Brief;
import spangle.plan.Kit;
import spangle.plan.LeftOut;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.Gate;
import spangle.plan.json.PlanFile;

/**
 * Says why a job is where it is: its last pieces, or all that are left out, are taken out of the
 * plan and put anew, first as the week is, then with one thing at a time out of the way. What lets
 * them be finished sooner is what holds them. Everybody else's dates are kept throughout.
 */
public final class WhyDesk {
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
        WhyWords.pieces(first.pieces()) + " not in the plan: a gate is shut",
        OptionalInt.empty(),
        0,
        Optional.empty(),
        gates.stream()
            .map(
                g ->
                    Why.Hold.without(
                        "gate",
                        "gate "
                            + g.code()
                            + ": "
                            + g.words()
                            + " ("
                            + g.whoAnswers()
                            + " must answer)"))
            .toList(),
        List.of(),
        List.of("No due date opens a gate."));
  }

  private Why part(List<Lot> part) {
    Lot last =
        part.stream()
            .max(Comparator.comparingInt(this::rank).thenComparingInt(this::earliest))
            .orElseThrow();
    OptionalInt end = end(last);
    List<String> notes = new ArrayList<>(kits(last));
    WhySearch.Found found = new WhySearch.Found(Optional.empty(), List.of(), List.of());
    notes.addAll(waiting(part));
    if (end.isPresent() && frozen(last)) {
      if (!hangsAndWaits(end)) {
        notes.add("it has been released or started: it stays where it is");
      }
    } else {
      List<Lot> asked = end.isPresent() ? List.of(last) : leftOut(part);
      found = new WhySearch(file, asked.stream().map(this::legs).toList(), end).find();
      if (last.dueMin() <= last.readyMin()) {
        notes.add("it is due before it is ready");
      }
    }
    return new Why(
        last.jobId(),
        last.partId(),
        last.jobId() + " " + last.label(),
        place(part, last, end),
        end,
        last.dueMin(),
        found.room(),
        found.holds(),
        found.lets(),
        notes);
  }

  /** In the order in which they are to be tried: the first ready first. */
  private List<Lot> leftOut(List<Lot> part) {
    return part.stream()
        .filter(l -> end(l).isEmpty())
        .sorted(Comparator.comparingInt(Lot::readyMin).thenComparing(Lot::id))
        .toList();
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
    return OptionalInt.of(LoadTimes.last(batch, load));
  }

  private boolean hangsAndWaits(OptionalInt end) {
    return end.isPresent() && end.getAsInt() > brief.horizonMin();
  }

  /** What stands in the way of its loads that hang, and who decides. */
  private List<String> waiting(List<Lot> part) {
    Set<String> own = new LinkedHashSet<>();
    for (Lot lot : part) {
      for (Lot leg : legs(lot)) {
        PlannedLoad load = loads.get(leg.id());
        if (load != null && hangsAndWaits(end(leg))) {
          own.add(load.id());
        }
      }
    }
    int atMin = file.replanned().map(r -> r.atMin()).orElse(0);
    return own.isEmpty()
        ? List.of()
        : HeldLoad.lines(
            StrandedLoads.of(brief, plan, atMin).stream()
                .filter(h -> own.contains(h.load()))
                .toList());
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
      String some = out == pieces ? WhyWords.pieces(out) : out + " of " + pieces + " pieces";
      return some + " not in this week: " + reason + earliest;
    }
    if (hangsAndWaits(end)) {
      List<Lot> waits = part.stream().filter(l -> hangsAndWaits(end(l))).toList();
      int some = waits.stream().mapToInt(Lot::pieces).sum();
      String on =
          waits.stream()
              .map(l -> loads.get(l.id()))
              .filter(Objects::nonNull)
              .map(PlannedLoad::id)
              .distinct()
              .collect(Collectors.joining(", "));
      return (some == pieces ? WhyWords.pieces(some) : some + " of " + pieces + " pieces")
          + " not finished this week: hung on "
          + on
          + ", waiting; due "
          + DayWords.due(last.dueMin());
    }
    String of = part.size() > 1 ? last.pieces() + " of " + pieces + " pieces, the last: " : "";
    int rest =
        part.stream().filter(l -> !l.equals(last)).mapToInt(l -> end(l).orElse(0)).max().orElse(0);
    PlannedLoad load = loads.get(last.id());
    PlannedBatch batch = batches.get(last.id());
    int hung = load == null || batch == null ? 0 : LoadTimes.first(batch, load);
    String late =
        end.getAsInt() > last.dueMin()
            ? "late by " + DayWords.length(end.getAsInt() - last.dueMin())
            : "in time";
    return String.format(
        Locale.ROOT,
        "%sload %s from %s, done %s%s; due %s, %s",
        of,
        load == null ? "?" : load.id(),
        DayWords.of(hung),
        DayWords.of(end.getAsInt()),
        rest > 0 ? " (the others by " + DayWords.of(rest) + ")" : "",
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
}
