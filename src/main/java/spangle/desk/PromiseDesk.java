package spangle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.event.Happenings;
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
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * Says when a new job can be had: its lots are put into the announced plan with the plan's own
 * clock, first so that nothing moves, then so that nobody's date moves, then so that it is finished
 * as early as can be and others slip. Every date given is that of a whole plan the audit has seen.
 */
public final class PromiseDesk {
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

  /**
   * Either a promise or why there is none.
   *
   * @param nothing why no date can be given; empty with a promise
   * @param refused the problems behind it
   */
  public record Answer(Optional<Promise> promise, String nothing, List<Problem> refused) {
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
      return none(folder + " cannot be read", reading.problems());
    }
    WeekInput input = reading.input().get();
    List<Problem> own =
        reading.problems().stream()
            .filter(p -> !input.digests().containsKey(p.place().file()) && isGuest(p, jobFile))
            .toList();
    Set<String> jobs = newJobs(input);
    if (jobs.isEmpty()) {
      return none(jobFile + " has no job that is new and complete", own);
    }
    PreparedWeek week = BriefMaker.prepare(input);
    List<String> notes = new ArrayList<>();
    PlanFile kept = kept(folder, plan, without(week, jobs), notes);
    PromiseDesk desk = new PromiseDesk(asIs(input, kept), week, kept, atMin, own);
    desk.notes.addAll(notes);
    return new Answer(Optional.of(desk.answer(jobs)), "", List.of());
  }

  /**
   * With the stations as they are by what the announced plan knows: broken, slow, short of crew.
   */
  private static WeekInput asIs(WeekInput input, PlanFile kept) {
    return kept.replanned()
        .map(r -> Happenings.of(input, input.events().until(r.atMin()), r.atMin()))
        .map(happened -> input.withShop(happened.input().shop()))
        .orElse(input);
  }

  private static Answer none(String why, List<Problem> problems) {
    return new Answer(Optional.empty(), "No date can be given; " + why, problems);
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
      PlanFile read = PlanShelf.sound(file.get());
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

  private Promise answer(Set<String> jobs) throws PlanFileException {
    List<Held> held = week.held().stream().filter(h -> jobs.contains(h.jobId())).toList();
    List<Lot> wanted = lots(week, jobs);
    List<String> work =
        week.parts().stream().filter(p -> jobs.contains(p.jobId())).map(this::work).toList();
    int due = wanted.stream().mapToInt(Lot::dueMin).max().orElse(0);
    if (!wanted.isEmpty() && due < atMin) {
      notes.add(
          "it is wanted for "
              + DayWords.due(due)
              + ", which is over by "
              + DayWords.of(atMin)
              + ": ask for a date that lies ahead");
    }
    List<String> lacking = new ArrayList<>();
    List<Promise.Offer> offers = new ArrayList<>();
    if (!wanted.isEmpty()) {
      new OfferSearch(input, week, kept, atMin, notes).offers(wanted, jobs, offers, lacking);
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
        part.description(),
        part.route().equals("duplex") ? "galvanized, " + finish : finish);
  }
}
