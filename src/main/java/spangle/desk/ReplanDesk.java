package spangle.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.audit.Audit;
import spangle.audit.LogAudit;
import spangle.equipment.Span;
import spangle.estimate.Purchase;
import spangle.intake.problem.Problem;
import spangle.intake.read.WeekReader;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.plan.Finding;
import spangle.plan.Held;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.event.Event;
import spangle.plan.event.EventLog;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanJson;
import spangle.plan.json.PlanYardstick;
import spangle.plan.json.Replanned;
import spangle.report.Change;
import spangle.report.ChangeSheet;
import spangle.report.Heading;
import spangle.report.ReportFiles;
import spangle.report.WeekReport;
import spangle.report.Yardstick;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * Plans the rest of a week again: what hangs stays, what is announced moves little, and the answer
 * is a list of what changed.
 */
public final class ReplanDesk {
  private final Solver solver = new Solver();

  /**
   * What became of it.
   *
   * @param problems all problems of the inputs, refused events among them
   * @param made the new plan; empty where the inputs were refused
   * @param refusal why there is none though the inputs can be read; empty where there is one
   */
  public record Outcome(List<Problem> problems, Optional<Replan> made, String refusal) {
    /** Of inputs that can be planned, or cannot be read. */
    public Outcome(List<Problem> problems, Optional<Replan> made) {
      this(problems, made, "");
    }

    /** Copies the list. */
    public Outcome {
      problems = List.copyOf(problems);
    }
  }

  /**
   * A week planned again.
   *
   * @param made the plan with its sheets
   * @param version its letter
   * @param replanned from what it was made
   * @param changes what is different
   * @param refused events that cannot be, in words
   */
  public record Replan(
      PlanDesk.Made made,
      String version,
      Replanned replanned,
      ChangeList changes,
      List<String> refused) {
    /** Copies the list. */
    public Replan {
      refused = List.copyOf(refused);
    }

    /** Whether something waits for a person. */
    public boolean waits() {
      return made.waits() || !refused.isEmpty() || !changes.held().isEmpty();
    }
  }

  /**
   * What is asked.
   *
   * @param week the week folder
   * @param shelf the plan people work by, with its history
   * @param atMin from when on something may change
   * @param freezeUntilMin what begins before it stays where nothing stands against it
   */
  public record Wish(Path week, PlanHistory shelf, int atMin, int freezeUntilMin) {}

  /** Ends the search; the best plan so far is kept. */
  public void stop() {
    solver.stop();
  }

  /** Reads and plans; writes nothing. */
  public Outcome replan(Wish wish, SolveOptions options, ProgressListener progress) {
    WeekReader.Reading reading = WeekReader.read(wish.week());
    if (reading.input().isEmpty()) {
      return new Outcome(reading.problems(), Optional.empty());
    }
    WeekInput input = reading.input().get();
    ReplanStart start =
        ReplanStart.of(input, wish.shelf().current(), wish.atMin(), wish.freezeUntilMin());
    Optional<String> gone = gone(start);
    if (gone.isPresent()) {
      return new Outcome(reading.problems(), Optional.empty(), gone.get());
    }
    Rest rest =
        rest(
            start,
            input,
            wish.shelf().current(),
            wish.shelf().currentSha256(),
            wish.shelf().next(),
            options,
            progress);
    Plan plan =
        HalfRoute.said(
            start.week().brief(), EarliestDates.in(start.week(), rest.plan(), wish.atMin()));
    List<Finding> findings = rest.findings();
    String version = rest.version();
    // Once more, now that what is left out has its earliest date.
    ChangeList changes = new ChangeFinder(wish.shelf().current(), start, plan, version).find();
    Replanned replanned = rest.replanned();
    StoreDesk stores = new StoreDesk(start.week(), plan, OptionalInt.of(wish.atMin()));
    List<Purchase> purchases = stores.purchases();
    Heading heading =
        new Heading(
            start.week().brief().name(),
            version,
            OptionalInt.of(wish.atMin()),
            wish.freezeUntilMin(),
            false);
    PlanYardstick yardstick = YardstickDesk.of(start.week(), plan);
    Yardstick sheet = YardstickDesk.sheet(start.week().brief(), plan, yardstick);
    WeekReport report =
        new ReportDesk(start.week(), plan, start.stopped(plan))
            .report(
                heading,
                purchases,
                findings,
                new Yardstick(sheet.bounds(), sheet.comparisons(), changesForSheet(changes)))
            .with(
                OvertimeDesk.of(start.week(), plan, wish.atMin()),
                LateCauses.of(start.week().brief(), plan));
    PlanDesk.Made made =
        new PlanDesk.Made(start.week(), plan, findings, purchases, report, Optional.of(yardstick));
    List<String> refused = new ArrayList<>();
    start.state().refused().forEach(r -> refused.add(words(r.event()) + ": " + r.why()));
    later(input.events(), wish.atMin()).forEach(refused::add);
    return new Outcome(
        reading.problems(), Optional.of(new Replan(made, version, replanned, changes, refused)));
  }

  /** Parts that hang, or are done, and that the job files do not name any more. */
  private static Optional<String> gone(ReplanStart start) {
    Set<String> named = new TreeSet<>();
    start.week().parts().forEach(p -> named.add(WeekIndex.key(p.jobId(), p.partId())));
    Set<String> gone = new TreeSet<>();
    for (Lot lot : start.week().brief().lots()) {
      String key = WeekIndex.key(lot.jobId(), lot.partId());
      if (!named.contains(key)) {
        gone.add(key + " (" + lot.label() + ")");
      }
    }
    return gone.isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.join(", ", gone)
                + ": pieces hang or are done, and the job files do not name them any more. Put the"
                + " lines back; where they are not wanted, report the job cancelled (spangle"
                + " event); then replan");
  }

  private static String words(Event event) {
    return "events.yaml, event "
        + event.number()
        + ", "
        + DayWords.of(event.atMin())
        + " "
        + event.words();
  }

  /** What was reported for a time after the plan's: it is kept, and counts in a later replan. */
  private static List<String> later(EventLog log, int atMin) {
    return log.until(Integer.MAX_VALUE).stream()
        .filter(e -> e.atMin() > atMin)
        .map(
            e ->
                words(e)
                    + ": not yet, it lies after "
                    + DayWords.of(atMin)
                    + "; replan at its time or later, or strike it where its time is wrong")
        .toList();
  }

  /**
   * Why there is no plan from a minute on: time does not run back behind the plan people work by.
   */
  public static Optional<String> tooEarly(PlanFile kept, int atMin) {
    return kept.replanned()
        .filter(r -> atMin < r.atMin())
        .map(
            r ->
                DayWords.of(atMin)
                    + " lies before "
                    + DayWords.of(r.atMin())
                    + ", from when on version "
                    + kept.version()
                    + " is valid: what ran by it would be planned again. Give that time or a later"
                    + " one; where it was wrong, go back to version "
                    + r.keptVersion()
                    + " first (spangle back)");
  }

  /** The rest of a week, planned and audited, without its sheets. */
  record Rest(
      ReplanStart start,
      Plan plan,
      ChangeList changes,
      List<Finding> findings,
      String version,
      Replanned replanned) {}

  Rest rest(
      ReplanStart start,
      WeekInput input,
      PlanFile kept,
      String keptSha256,
      String version,
      SolveOptions options,
      ProgressListener progress) {
    Plan plan = solver.solve(start.week().brief(), start.earlier(), options, progress);
    Replanned replanned =
        new Replanned(
            start.state().atMin(),
            kept.version(),
            keptSha256,
            input.events().last(),
            start.forced().entrySet().stream()
                .map(e -> new Replanned.Recalled(e.getKey(), e.getValue()))
                .toList());
    ChangeList changes = new ChangeFinder(kept, start, plan, version).find();
    List<Finding> findings = new ArrayList<>(Audit.of(start.week().brief(), plan));
    findings.addAll(LogAudit.of(logCase(kept, input, start, plan, replanned, version)));
    return new Rest(start, plan, changes, List.copyOf(findings), version, replanned);
  }

  static LogAudit.Case logCase(
      PlanFile kept,
      WeekInput input,
      ReplanStart start,
      Plan plan,
      Replanned replanned,
      String version) {
    return new LogAudit.Case(
        kept.brief(),
        kept.plan(),
        Heard.known(kept, input.events()),
        input.events(),
        replanned.events(),
        replanned.atMin(),
        start.week().brief(),
        plan,
        orders(input, start.week().held()),
        LogProof.sheets(replanned, version));
  }

  private static List<LogAudit.PartOrder> orders(WeekInput input, List<Held> held) {
    List<LogAudit.PartOrder> orders = new ArrayList<>();
    for (Job job : input.jobs()) {
      for (PartLine line : job.parts()) {
        Map<String, Integer> gates = new HashMap<>();
        held.stream()
            .filter(h -> h.jobId().equals(job.id()) && h.partId().equals(line.id()))
            .forEach(h -> gates.put(h.gate(), h.pieces()));
        orders.add(
            new LogAudit.PartOrder(job.id(), line.id(), line.qty(), gates, input.mostCoats(line)));
      }
    }
    return orders;
  }

  private static List<Change> changesForSheet(ChangeList changes) {
    return changes.lines().stream()
        .map(
            l ->
                new Change(
                    l.kind().word(),
                    l.load().isEmpty() ? l.what() : l.load() + ", " + l.what(),
                    l.before(),
                    l.after() + (l.reason().isEmpty() ? "" : " (" + l.reason() + ")"),
                    l.tell()))
        .toList();
  }

  /**
   * Writes the new plan with all its sheets and keeps the old one beside it, all or none.
   *
   * @return names of the files of the new plan
   * @throws IOException when the disk refuses; what was there before is still there
   */
  public static List<String> write(Wish wish, Path out, Replan replan) throws IOException {
    PlanDesk.requireOwnFolder(wish.week(), out);
    Map<String, byte[]> files = new TreeMap<>(ReportFiles.render(replan.made().report()));
    files.put(
        "plan.json",
        PlanJson.write(
            PlanDesk.planFile(
                wish.week(),
                Optional.empty(),
                out,
                replan.made(),
                replan.version(),
                Optional.of(replan.replanned()))));
    files.put("changes.html", ChangeSheet.of(sheet(wish, replan)));
    List<String> names = new ArrayList<>(files.keySet());
    files.putAll(wish.shelf().keptFiles());
    WholeFolder.replace(out, files);
    return names;
  }

  private static ChangeSheet.Content sheet(Wish wish, Replan replan) {
    ChangeList changes = replan.changes();
    return new ChangeSheet.Content(
        replan.made().report().heading().shop(),
        replan.version(),
        wish.shelf().current().version(),
        DayWords.of(wish.atMin()),
        changes.loadsMoved(),
        changes.loadsDropped(),
        changes.minutesMoved(),
        changes.coloursReordered(),
        changes.held(),
        changes.lines().stream()
            .map(
                l ->
                    new ChangeSheet.Row(
                        l.kind().word(),
                        l.load(),
                        l.what(),
                        l.before(),
                        l.after(),
                        l.reason(),
                        l.tell(),
                        l.sheet()))
            .toList());
  }

  /**
   * End of the half-shift a minute lies in: of the last open stretch of any line's first station
   * around it.
   */
  public static int halfShiftEnd(PlanFile kept, int atMin) {
    int end = atMin;
    for (LineSpec line : kept.brief().lines()) {
      List<Span> open =
          line.before().isEmpty() ? List.of() : line.before().get(0).calendar().open();
      for (Span span : open) {
        if (span.startMin() <= atMin && atMin < span.endMin()) {
          end = Math.max(end, span.endMin());
        }
      }
    }
    return end;
  }
}
