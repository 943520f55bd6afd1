package spangle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import spangle.audit.Audit;
import spangle.estimate.Purchase;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.problem.Problem;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.plan.Finding;
import spangle.plan.Plan;
import spangle.plan.json.InputDigest;
import spangle.plan.json.OverlayDigest;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanJson;
import spangle.plan.json.PlanYardstick;
import spangle.plan.json.Replanned;
import spangle.plan.json.StartedFrom;
import spangle.report.ReportFiles;
import spangle.report.WeekReport;
import spangle.report.week.WeekTime;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/** Plans a week: read, measure, ask the gates, search, audit, estimate, write. */
public final class PlanDesk {
  private final Solver solver = new Solver();

  /**
   * What became of it.
   *
   * @param problems all problems of the inputs
   * @param made the plan; empty where the inputs were refused
   */
  public record Outcome(List<Problem> problems, Optional<Made> made) {
    /** Copies the list. */
    public Outcome {
      problems = List.copyOf(problems);
    }
  }

  /**
   * A planned week.
   *
   * @param week what it was made from
   * @param plan the plan
   * @param findings what the audit says
   * @param purchases what to buy
   * @param report what the sheets show
   * @param yardstick how good the plan is; empty where that was not asked
   * @param startedFrom for a what-if the plan from which its search started
   */
  public record Made(
      PreparedWeek week,
      Plan plan,
      List<Finding> findings,
      List<Purchase> purchases,
      WeekReport report,
      Optional<PlanYardstick> yardstick,
      Optional<StartedFrom> startedFrom) {
    /** A plan of the week as it is. */
    public Made(
        PreparedWeek week,
        Plan plan,
        List<Finding> findings,
        List<Purchase> purchases,
        WeekReport report,
        Optional<PlanYardstick> yardstick) {
      this(week, plan, findings, purchases, report, yardstick, Optional.empty());
    }

    /** A plan that nobody asked how good it is. */
    public Made(
        PreparedWeek week,
        Plan plan,
        List<Finding> findings,
        List<Purchase> purchases,
        WeekReport report) {
      this(week, plan, findings, purchases, report, Optional.empty());
    }

    /** Copies the lists. */
    public Made {
      findings = List.copyOf(findings);
      purchases = List.copyOf(purchases);
    }

    /** Whether something waits for a person. */
    public boolean waits() {
      return !findings.isEmpty()
          || !week.held().isEmpty()
          || !plan.leftOut().isEmpty()
          || plan.figures().lateLots() > 0
          || plan.figures().lateKits() > 0
          || !week.input().problems().isEmpty();
    }
  }

  /** Ends the search; the best plan so far is kept and written. */
  public void stop() {
    solver.stop();
  }

  /** Reads and plans; writes nothing. */
  public Outcome plan(Path folder, SolveOptions options, ProgressListener progress) {
    return plan(folder, Optional.empty(), options, progress);
  }

  /** Reads a week as it would be with an overlay, and plans it anew; writes nothing. */
  public Outcome plan(
      Path folder, Optional<Path> overlay, SolveOptions options, ProgressListener progress) {
    return plan(folder, overlay, WhatIfStart.ANEW, options, progress);
  }

  /**
   * Reads a week as it would be with an overlay, and plans it; writes nothing.
   *
   * @param start from which plan the search starts
   */
  public Outcome plan(
      Path folder,
      Optional<Path> overlay,
      WhatIfStart start,
      SolveOptions options,
      ProgressListener progress) {
    WeekReader.Reading reading = WeekReader.read(folder, Besides.overlay(overlay));
    if (reading.input().isEmpty()) {
      return new Outcome(reading.problems(), Optional.empty());
    }
    PreparedWeek week = BriefMaker.prepare(reading.input().get());
    Plan plan =
        start
            .unchanged(week.brief())
            .orElseGet(
                () ->
                    HalfRoute.said(
                        week.brief(),
                        EarliestDates.in(
                            week,
                            solver.solve(week.brief(), start.batches(), options, progress),
                            0)));
    List<Finding> findings = Audit.of(week.brief(), plan);
    StoreDesk stores = new StoreDesk(week, plan);
    List<Purchase> purchases = stores.purchases();
    PlanYardstick yardstick = YardstickDesk.of(week, plan);
    WeekReport report =
        new ReportDesk(week, plan)
            .report(purchases, findings, YardstickDesk.sheet(week.brief(), plan, yardstick))
            .with(OvertimeDesk.of(week, plan, 0), LateCauses.of(week.brief(), plan));
    return new Outcome(
        reading.problems(),
        Optional.of(
            new Made(
                week,
                plan,
                findings,
                purchases,
                report,
                Optional.of(yardstick),
                start.kept(week.brief()))));
  }

  /**
   * Writes plan and sheets, all of them or none.
   *
   * @return names of the files
   * @throws IOException when the disk refuses; what was there before is still there
   */
  public static List<String> write(Path folder, Path out, Made made) throws IOException {
    return write(folder, Optional.empty(), out, made);
  }

  /**
   * Writes plan and sheets of a what-if.
   *
   * @param overlay the overlay it was planned with
   * @throws IOException when the disk refuses; what was there before is still there
   */
  public static List<String> write(Path folder, Optional<Path> overlay, Path out, Made made)
      throws IOException {
    requireOwnFolder(folder, out);
    Map<String, byte[]> files = new TreeMap<>(ReportFiles.render(made.report()));
    files.put(
        "plan.json",
        PlanJson.write(planFile(folder, overlay, out, made, PlanHistory.FIRST, Optional.empty())));
    WholeFolder.replace(out, files);
    return new ArrayList<>(files.keySet());
  }

  /**
   * Refuses sheets in the place of the week folder itself, and among its job files, where the next
   * reading would take them for orders; and a place that cannot be written, before anybody waits
   * for a plan.
   *
   * @throws IOException in words for the person
   */
  public static void requireOwnFolder(Path folder, Path out) throws IOException {
    if (folder.toAbsolutePath().normalize().startsWith(out.toAbsolutePath().normalize())) {
      throw new IOException(
          out + " is the week folder or holds it; sheets need a folder of their own (--out)");
    }
    if (out.toAbsolutePath()
        .normalize()
        .startsWith(folder.toAbsolutePath().normalize().resolve("jobs"))) {
      throw new IOException(
          out + " is where the week's job files stand; sheets need a folder of their own (--out)");
    }
    WholeFolder.requireRoom(out);
  }

  static PlanFile planFile(
      Path folder,
      Optional<Path> overlay,
      Path out,
      Made made,
      String version,
      Optional<Replanned> replanned)
      throws IOException {
    List<InputDigest> inputs = new ArrayList<>();
    for (Map.Entry<String, String> file : made.week().input().digests().entrySet()) {
      inputs.add(
          new InputDigest(
              file.getKey(), Files.size(folder.resolve(file.getKey())), file.getValue()));
    }
    String seen = seenFrom(out, folder);
    return new PlanFile(
        PlanFile.FORMAT,
        version,
        seen.isEmpty() ? "." : seen,
        inputs,
        overlay.flatMap(path -> digest(out, path, made)),
        replanned,
        GateList.of(made.week()),
        made.week().brief(),
        made.plan(),
        made.findings(),
        Estimates.kept(
            Charge.of(made.week(), made.plan()),
            made.report().stores().allowances(),
            made.report().overtime(),
            new WeekTime(made.week().brief().monday())),
        made.yardstick());
  }

  /** A minute of the week as people write it; empty where it is none. */
  public static OptionalInt minute(Path week, String text) {
    return WeekReader.minute(week, text);
  }

  /** A minute of the week in words. */
  public static String when(int minute) {
    return DayWords.of(minute);
  }

  /** Where the sheets of a what-if go unless somebody says otherwise: beside its overlay. */
  public static Path besideOverlay(Path overlay) {
    String name = String.valueOf(overlay.getFileName());
    int dot = name.lastIndexOf('.');
    return overlay.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".plan");
  }

  private static String seenFrom(Path out, Path file) {
    return out.toAbsolutePath()
        .normalize()
        .relativize(file.toAbsolutePath().normalize())
        .toString()
        .replace('\\', '/');
  }

  private static Optional<OverlayDigest> digest(Path out, Path overlay, Made made) {
    return made.week()
        .input()
        .overlay()
        .map(
            o ->
                new OverlayDigest(
                    o.title(), seenFrom(out, overlay), o.bytes(), o.sha256(), made.startedFrom()));
  }
}
