package spangle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.audit.Audit;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.problem.Problem;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.intake.week.Coating;
import spangle.intake.week.Job;
import spangle.intake.week.WeekInput;
import spangle.plan.Brief;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.PartFacts;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.Supply;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.report.week.KitStatus;
import spangle.solve.Freedom;
import spangle.solve.Inserted;
import spangle.solve.Inserter;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * Says when a new job can be had: its lots are put into the announced plan with the plan's own
 * clock, first so that nothing moves, then so that nobody's date moves, then so that it is finished
 * as early as can be and others slip. Every date given is that of a whole plan the audit has seen.
 */
public final class PromiseDesk {
  /** Weeks looked ahead where the week itself has no room. */
  private static final int MORE_DAYS = 14;

  private static final String NOT_EXACT =
      "the announced plan leaves work out in the middle of a row and cannot be timed again to the"
          + " minute: loads that move and slips that come from this alone are among those named;"
          + " plan or replan with more time for a gentler answer";

  private final WeekInput input;
  private final PreparedWeek week;
  private final PlanFile kept;
  private final int atMin;
  private final List<String> notes = new ArrayList<>();
  private final List<Problem> problems;

  private PromiseDesk(
      WeekInput input, PreparedWeek week, PlanFile kept, int atMin, List<Problem> problems) {
    this.input = input;
    this.week = week;
    this.kept = kept;
    this.atMin = atMin;
    this.problems = problems;
  }

  /** Either a promise or the problems that keep the files from being read. */
  public record Answer(Optional<Promise> promise, List<Problem> refused) {
    /** Copies the list. */
    public Answer {
      refused = List.copyOf(refused);
    }
  }

  /**
   * Answers for the jobs of a file.
   *
   * @param folder the week folder
   * @param jobFile a job file nobody has accepted yet
   * @param plan the announced plan; empty = the one in the week folder, else a first plan is made
   * @param atMin nothing new starts before this minute of the week
   * @throws IOException when a file cannot be opened
   * @throws PlanFileException when the announced plan is none
   */
  public static Answer promise(Path folder, Path jobFile, Optional<Path> plan, int atMin)
      throws IOException, PlanFileException {
    WeekReader.Reading reading =
        WeekReader.read(folder, new Besides(Optional.empty(), Optional.of(jobFile)));
    if (reading.input().isEmpty()) {
      return new Answer(Optional.empty(), reading.problems());
    }
    WeekInput input = reading.input().get();
    List<Problem> own =
        reading.problems().stream()
            .filter(p -> !input.digests().containsKey(p.place().file()) && isGuest(p, jobFile))
            .toList();
    Set<String> jobs = newJobs(input);
    if (jobs.isEmpty()) {
      return new Answer(Optional.empty(), own.isEmpty() ? reading.problems() : own);
    }
    PreparedWeek week = BriefMaker.prepare(input);
    List<String> notes = new ArrayList<>();
    PlanFile kept = kept(folder, plan, without(week, jobs), notes);
    PromiseDesk desk = new PromiseDesk(input, week, kept, atMin, own);
    desk.notes.addAll(notes);
    return new Answer(Optional.of(desk.answer(jobs)), List.of());
  }

  private static boolean isGuest(Problem problem, Path jobFile) {
    return problem.place().file().endsWith(String.valueOf(jobFile.getFileName()));
  }

  private static Set<String> newJobs(WeekInput input) {
    Set<String> jobs = new TreeSet<>();
    for (Job job : input.jobs()) {
      boolean known =
          job.parts().stream().anyMatch(p -> input.digests().containsKey(p.place().file()));
      if (!known && !job.parts().isEmpty()) {
        jobs.add(job.id());
      }
    }
    return jobs;
  }

  private static Brief without(PreparedWeek week, Set<String> jobs) {
    return BriefChange.lots(
        week.brief(), week.brief().lots().stream().filter(l -> !jobs.contains(l.jobId())).toList());
  }

  private static PlanFile kept(Path folder, Optional<Path> plan, Brief without, List<String> notes)
      throws IOException, PlanFileException {
    Path usual = folder.resolve("plan").resolve("plan.json");
    Optional<Path> file =
        plan.or(() -> Files.isRegularFile(usual) ? Optional.of(usual) : Optional.empty());
    if (file.isPresent()) {
      PlanFile read = PlanShelf.read(file.get());
      List<String> changed = PlanShelf.changed(read, folder);
      if (!changed.isEmpty()) {
        notes.add(
            "the week's files are not those the announced plan was made from ("
                + String.join("; ", changed)
                + "): plan again, then promise");
      }
      return read;
    }
    notes.add("no plan is announced; a first plan of the week was made to answer");
    Plan first = new Solver().solve(without, new SolveOptions(0, 0, 1, 1), ProgressListener.NOBODY);
    return new PlanFile(
        PlanFile.FORMAT,
        "A",
        ".",
        List.of(),
        Optional.empty(),
        List.of(),
        without,
        first,
        List.of(),
        Optional.empty());
  }

  private Promise answer(Set<String> jobs) {
    List<Held> held = week.held().stream().filter(h -> jobs.contains(h.jobId())).toList();
    List<Lot> wanted = lots(week, jobs);
    List<String> work =
        week.parts().stream().filter(p -> jobs.contains(p.jobId())).map(this::work).toList();
    int due = wanted.stream().mapToInt(Lot::dueMin).max().orElse(0);
    List<String> lacking = new ArrayList<>();
    List<Promise.Offer> offers = new ArrayList<>();
    if (!wanted.isEmpty()) {
      offers(wanted, jobs, offers, lacking);
    } else if (held.isEmpty()) {
      lacking.add("nothing of it can be planned");
    }
    return new Promise(List.copyOf(jobs), work, due, offers, held, lacking, notes, problems);
  }

  private List<Lot> lots(PreparedWeek from, Set<String> jobs) {
    return from.brief().lots().stream()
        .filter(l -> jobs.contains(l.jobId()))
        .map(l -> LaterWeek.notBefore(l, atMin))
        .toList();
  }

  private String work(PartFacts part) {
    String finish =
        part.coatingIds().stream()
            .map(id -> input.catalogue().coating(id).map(Coating::name).orElse(id))
            .reduce((a, b) -> a + ", then " + b)
            .orElse(part.route());
    return String.format(
        Locale.ROOT,
        "%s: %d x %s, %s",
        part.jobId(),
        part.pieces(),
        part.description().isEmpty() ? part.partId() : part.description(),
        part.route().equals("duplex") ? "galvanized, " + finish : finish);
  }

  private void offers(
      List<Lot> wanted, Set<String> jobs, List<Promise.Offer> offers, List<String> lacking) {
    Brief brief = joined(wanted, List.of());
    Inserter inserter = new Inserter(brief, kept.plan());
    for (Freedom freedom : Freedom.values()) {
      inserter
          .insert(ids(wanted), freedom)
          .map(i -> offer(freedom, brief, i, ids(wanted), jobs, List.of()))
          .filter(o -> offers.stream().allMatch(other -> worthSaying(o, other)))
          .ifPresent(offers::add);
    }
    if (offers.stream().noneMatch(o -> o.freedom() != Freedom.DATES_MAY_SLIP)) {
      later(brief, wanted, jobs, offers, lacking);
    }
  }

  /** A date that costs others something is only worth saying when it is clearly sooner. */
  private static boolean worthSaying(Promise.Offer offer, Promise.Offer gentler) {
    return offer.endMin() + PartChange.WORTH_SAYING_MIN <= gentler.endMin();
  }

  /** The kept plan's brief, the new lots, and more of what they draw where it is ordered now. */
  private Brief joined(List<Lot> wanted, List<Supply.Arrival> ordered) {
    Brief b = kept.brief();
    boolean underWay = !b.frozen().isEmpty();
    List<Lot> all = new ArrayList<>(b.lots());
    all.addAll(wanted);
    List<Supply> supplies = new ArrayList<>();
    for (Supply supply : underWay ? b.supplies() : week.brief().supplies()) {
      List<Supply.Arrival> arrivals = new ArrayList<>(supply.arrivals());
      ordered.stream().filter(a -> a.lot().equals(supply.materialId())).forEach(arrivals::add);
      supplies.add(new Supply(supply.materialId(), supply.name(), arrivals));
    }
    return new Brief(
        b.name(),
        b.monday(),
        b.horizonMin(),
        underWay ? b.lines() : week.brief().lines(),
        underWay ? b.carriers() : week.brief().carriers(),
        all,
        b.kits(),
        supplies,
        b.goals(),
        b.frozen(),
        b.announced());
  }

  private static List<String> ids(List<Lot> lots) {
    return lots.stream().map(Lot::id).toList();
  }

  /** The week has no room, or not the material: the weeks behind it, and what can be ordered. */
  private void later(
      Brief brief,
      List<Lot> wanted,
      Set<String> jobs,
      List<Promise.Offer> offers,
      List<String> lacking) {
    List<String> conditions = new ArrayList<>();
    List<Supply.Arrival> ordered = orders(brief, wanted, conditions);
    int end = brief.horizonMin();
    Brief within = joined(wanted, ordered);
    if (!ordered.isEmpty()) {
      Optional<Inserted> sooner =
          new Inserter(within, kept.plan()).insert(ids(wanted), Freedom.DATES_KEPT);
      if (sooner.isPresent()) {
        offers.add(
            0, offer(Freedom.DATES_KEPT, within, sooner.get(), ids(wanted), jobs, conditions));
        return;
      }
    }
    List<Lot> next = wanted.stream().map(l -> LaterWeek.notBefore(l, end)).toList();
    Set<String> waiting = new HashSet<>();
    kept.plan().leftOut().forEach(l -> waiting.add(l.lotId()));
    List<Lot> all = new ArrayList<>();
    List<String> queue = new ArrayList<>();
    for (Lot lot : kept.brief().lots()) {
      boolean waits = waiting.contains(lot.id());
      all.add(waits ? LaterWeek.notBefore(lot, end) : lot);
      if (waits) {
        queue.add(lot.id());
      }
    }
    all.addAll(next);
    Brief longer = LaterWeek.behind(within, LaterWeek.of(input, MORE_DAYS).brief(), all);
    Plan base = kept.plan();
    int placed = 0;
    for (String id : queue) {
      Optional<Inserted> one =
          new Inserter(longer, base).insert(List.of(id), Freedom.NOTHING_MOVES);
      if (one.isPresent()) {
        base = one.get().plan();
        placed++;
      }
    }
    Optional<Inserted> then = new Inserter(longer, base).insert(ids(next), Freedom.NOTHING_MOVES);
    if (then.isEmpty()) {
      lacking.add(
          "no place was found before "
              + DayWords.of(longer.horizonMin() - 1)
              + " either"
              + (conditions.isEmpty() ? "" : ", even " + String.join(", ", conditions)));
      return;
    }
    if (placed > 0) {
      notes.add(
          placed
              + " lots that are left out of this week already wait; they were put in front of it");
    }
    Promise.Offer sure =
        offer(Freedom.NOTHING_MOVES, longer, then.get(), ids(next), jobs, conditions);
    offers.add(0, sure);
    if (offers.size() == 1 && ordered.isEmpty()) {
      sooner(longer, base, wanted, jobs, sure).ifPresent(offers::add);
    }
  }

  /** In the week after all, where others may be pushed into the next. */
  private Optional<Promise.Offer> sooner(
      Brief longer, Plan base, List<Lot> wanted, Set<String> jobs, Promise.Offer sure) {
    List<Lot> lots = new ArrayList<>(longer.lots());
    lots.removeIf(l -> jobs.contains(l.jobId()));
    lots.addAll(wanted);
    Brief brief = BriefChange.lots(longer, lots);
    return new Inserter(brief, base)
        .insert(ids(wanted), Freedom.DATES_MAY_SLIP)
        .map(i -> offer(Freedom.DATES_MAY_SLIP, brief, i, ids(wanted), jobs, List.of()))
        .filter(o -> worthSaying(o, sure));
  }

  /** What the new lots lack, ordered at once: whole packs after the lead time. */
  private List<Supply.Arrival> orders(Brief brief, List<Lot> wanted, List<String> conditions) {
    List<Supply.Arrival> ordered = new ArrayList<>();
    Conditions stock = new Conditions(brief);
    Set<String> materials = new TreeSet<>();
    wanted.forEach(l -> materials.add(l.finish().materialId()));
    for (Coating coating : input.catalogue().coatings().toList()) {
      double lacks =
          materials.contains(coating.id()) ? stock.shortBy(kept.plan(), wanted, coating.id()) : 0;
      if (lacks > 0) {
        double pack = coating.stock().pack();
        double amount = pack > 0 ? Math.ceil(lacks / pack - 1e-9) * pack : lacks;
        int at = LaterWeek.workingDaysAfter(brief.monday(), atMin, coating.stock().leadDays());
        ordered.add(new Supply.Arrival(at, amount, coating.id()));
        conditions.add(
            String.format(
                Locale.ROOT,
                "if %.1f %s more of %s, ordered %s, arrive by %s (%d working days)",
                amount,
                stock.unit(coating.id()),
                coating.name(),
                DayWords.of(atMin).replaceFirst(" [0-9:]+$", ""),
                DayWords.of(at),
                coating.stock().leadDays()));
      }
    }
    return ordered;
  }

  private Promise.Offer offer(
      Freedom freedom,
      Brief brief,
      Inserted made,
      List<String> lotIds,
      Set<String> jobs,
      List<String> ordered) {
    PlanFile before = file(kept.brief(), kept.plan());
    PlanFile after = file(brief, made.plan());
    Map<String, PartFate> fates = new TreeMap<>(PartFate.of(after));
    List<String> slips =
        PartChange.of(PartFate.of(before), fates, 1).stream()
            .filter(c -> !jobs.contains(c.jobId()) && c.kind().equals("later") && c.lateNow())
            .map(PartChange::words)
            .toList();
    List<String> conditions = new ArrayList<>(ordered);
    new Conditions(brief)
        .of(made.plan(), Set.copyOf(lotIds)).stream()
            .filter(c -> ordered.isEmpty() || kept(c))
            .forEach(conditions::add);
    int moved = moved(made.plan());
    if (freedom == Freedom.NOTHING_MOVES && moved > 0 && !notes.contains(NOT_EXACT)) {
      notes.add(NOT_EXACT);
    }
    List<String> lateKits = lateKits(before, after);
    return new Promise.Offer(
        honest(freedom, moved, slips.isEmpty() && lateKits.isEmpty()),
        made.endMin(),
        moved,
        slips,
        lateKits,
        where(brief, made.plan(), Set.copyOf(lotIds)),
        conditions,
        made.plan(),
        Audit.of(brief, made.plan()));
  }

  /**
   * What an offer really leaves alone: a plan whose files or program changed since cannot always be
   * timed again to the minute.
   */
  private static Freedom honest(Freedom asked, int moved, boolean allInTime) {
    if (!allInTime) {
      return Freedom.DATES_MAY_SLIP;
    }
    return asked == Freedom.NOTHING_MOVES && moved > 0 ? Freedom.DATES_KEPT : asked;
  }

  /** Kits that were complete and are now complete later than that and than they are due. */
  private static List<String> lateKits(PlanFile before, PlanFile after) {
    Map<String, Integer> was = new TreeMap<>();
    for (KitStatus kit : Balance.kits(before)) {
      kit.completeMin().ifPresent(m -> was.put(kit.kit().id(), m));
    }
    List<String> words = new ArrayList<>();
    for (KitStatus kit : Balance.kits(after)) {
      Integer then = was.get(kit.kit().id());
      int now = kit.completeMin().orElse(-1);
      if (then != null && now > then && now > kit.kit().dueMin()) {
        words.add(
            kit.kit().name()
                + ": complete "
                + DayWords.of(now)
                + ", "
                + DayWords.length(now - then)
                + " later; late by "
                + DayWords.length(now - kit.kit().dueMin()));
      }
    }
    return words;
  }

  /** What is ordered for it is said once, as an order, not again as a delivery. */
  private boolean kept(String condition) {
    return input.catalogue().coatings().noneMatch(c -> condition.contains("(lot " + c.id() + ")"));
  }

  private PlanFile file(Brief brief, Plan plan) {
    return new PlanFile(
        PlanFile.FORMAT,
        kept.version(),
        kept.weekFolder(),
        kept.inputs(),
        kept.overlay(),
        kept.gates(),
        brief,
        plan,
        List.of(),
        Optional.empty());
  }

  /** Announced loads that are not where and when they were announced. */
  private int moved(Plan plan) {
    Map<String, List<Integer>> now = times(plan);
    int moved = 0;
    for (PlannedBatch batch : kept.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        boolean same =
            load.lotIds().stream()
                .allMatch(id -> times(batch, load).equals(now.getOrDefault(id, List.of())));
        moved += same ? 0 : 1;
      }
    }
    return moved;
  }

  private static Map<String, List<Integer>> times(Plan plan) {
    Map<String, List<Integer>> times = new TreeMap<>();
    plan.batches()
        .forEach(b -> b.loads().forEach(l -> l.lotIds().forEach(id -> times.put(id, times(b, l)))));
    return times;
  }

  private static List<Integer> times(PlannedBatch batch, PlannedLoad load) {
    List<Integer> times = new ArrayList<>(List.of(batch.startMin(), batch.machineId().hashCode()));
    load.visits().forEach(v -> times.add(v.startMin()));
    return times;
  }

  private static List<String> where(Brief brief, Plan plan, Set<String> lotIds) {
    Map<String, Lot> lots = new TreeMap<>();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    List<String> where = new ArrayList<>();
    List<PlannedBatch> inTime = new ArrayList<>(plan.batches());
    inTime.sort(Comparator.comparingInt(PlannedBatch::startMin));
    for (PlannedBatch batch : inTime) {
      for (PlannedLoad load : batch.loads()) {
        List<Lot> ours = load.lotIds().stream().filter(lotIds::contains).map(lots::get).toList();
        if (!ours.isEmpty()) {
          OptionalInt hung =
              load.visits().stream().mapToInt(PlannedLoad.PlannedVisit::startMin).min();
          where.add(
              String.format(
                  Locale.ROOT,
                  "%d x %s, %s: load %s%s from %s, in %s %s",
                  ours.stream().mapToInt(Lot::pieces).sum(),
                  ours.get(0).label(),
                  ours.get(0).finish().name(),
                  load.id(),
                  ours.size() < load.lotIds().size() ? " (shared)" : "",
                  DayWords.of(hung.orElse(batch.startMin())),
                  machine(brief, batch),
                  DayWords.of(batch.startMin())));
        }
      }
    }
    return where;
  }

  private static String machine(Brief brief, PlannedBatch batch) {
    return brief.lines().stream()
        .flatMap(l -> l.machines().stream())
        .filter(m -> m.id().equals(batch.machineId()))
        .map(m -> m.name())
        .findFirst()
        .orElse(batch.machineId());
  }
}
