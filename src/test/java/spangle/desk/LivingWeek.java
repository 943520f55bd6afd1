package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.WeekCopy;
import spangle.audit.Audit;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.Moment;
import spangle.intake.read.WeekReader;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.plan.Finding;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.EventKind;
import spangle.plan.event.WeekState;
import spangle.plan.json.PlanFile;
import spangle.plan.json.Replanned;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/** A copy of a sample week that lives: events are written down, the rest is planned again. */
final class LivingWeek {
  private final Path folder;
  private final long steps;
  private PlanFile plan;
  private PlanFile before;
  private ReplanDesk.Rest last;
  private int version = 'A';

  LivingWeek(Path sample, Path folder, long steps) {
    this.folder = folder;
    this.steps = steps;
    WeekCopy.unplanned(sample, folder);
    PreparedWeek week = BriefMaker.prepare(input());
    Plan first =
        new Solver()
            .solve(week.brief(), new SolveOptions(600, steps, 1, 1), ProgressListener.NOBODY);
    this.plan = file(week, first, Optional.empty());
    this.before = plan;
  }

  WeekInput input() {
    return WeekReader.read(folder).input().orElseThrow();
  }

  private PlanFile file(PreparedWeek week, Plan made, Optional<Replanned> replanned) {
    return new PlanFile(
        PlanFile.FORMAT,
        Character.toString(version),
        ".",
        List.of(),
        Optional.empty(),
        replanned,
        GateList.of(week),
        week.brief(),
        made,
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  /** The plan people work by. */
  PlanFile plan() {
    return plan;
  }

  int minute(String words) {
    return Moment.of(plan.brief().monday(), words).orElseThrow();
  }

  /** Writes one line into the log, as a person with an editor would. */
  LivingWeek event(String line) {
    try {
      Path log = folder.resolve("events.yaml");
      String text = Files.exists(log) ? Files.readString(log) : "events:\n";
      Files.writeString(log, text + "  - {" + line + "}\n");
      return this;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Puts another job file into the week. */
  LivingWeek jobs(String file, String text) {
    try {
      Files.writeString(folder.resolve("jobs").resolve(file), text);
      return this;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Adds a line to every product of the coatings file that has another. */
  LivingWeek coatings(String after, String line) {
    try {
      Path file = folder.resolve("coatings.yaml");
      String text = Files.readString(file);
      Files.writeString(file, text.replace(after, after + "\n    " + line));
      return this;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Plans the rest again and makes it the plan people work by. */
  ReplanDesk.Rest replan(String at) {
    return replan(minute(at));
  }

  ReplanDesk.Rest replan(int atMin) {
    version++;
    WeekInput input = input();
    last =
        new ReplanDesk()
            .rest(
                ReplanStart.of(input, plan, atMin, ReplanDesk.halfShiftEnd(plan, atMin)),
                input,
                plan,
                "0".repeat(64),
                Character.toString(version),
                new SolveOptions(600, steps, 1, 1),
                ProgressListener.NOBODY);
    before = plan;
    plan = file(last.start().week(), last.plan(), Optional.of(last.replanned()));
    return last;
  }

  /** Plans again and looks: no finding, every lot once, every piece counted. */
  ReplanDesk.Rest sound(int atMin, String what) {
    ReplanDesk.Rest rest = replan(atMin);
    assertThat(rest.findings()).as("findings, %s", what).isEmpty();
    assertThat(everyLotOnce()).as("every lot once, %s", what).isTrue();
    assertThat(sums())
        .as("ordered = planned + waiting + left out + done + scrapped, %s", what)
        .allSatisfy((part, sum) -> assertThat(sum.holds()).as(part + " " + sum).isTrue());
    return rest;
  }

  ReplanDesk.Rest sound(String at) {
    return sound(minute(at), at);
  }

  /** The same, and every event counts. */
  ReplanDesk.Rest heard(String at) {
    ReplanDesk.Rest rest = sound(at);
    assertThat(rest.start().state().refused()).as("refused, %s", at).isEmpty();
    return rest;
  }

  /** Lots of rejected pieces that go round again. */
  List<Lot> again() {
    return plan.brief().lots().stream().filter(l -> l.id().contains("#r")).toList();
  }

  /** What waits to be stripped after the last replan. */
  List<Held> toStrip() {
    return last.start().week().held().stream()
        .filter(h -> h.gate().equals("rework-strip"))
        .toList();
  }

  /** Cautions on the sheet of the load that carries a lot. */
  List<String> cautions(String lot) {
    PlannedLoad load =
        plan.plan().batches().stream()
            .flatMap(b -> b.loads().stream())
            .filter(l -> l.lotIds().contains(lot))
            .findFirst()
            .orElseThrow();
    return new LoadNotes(last.start().week(), List.of())
        .of(plan.plan()).stream()
            .filter(n -> n.loadId().equals(load.id()))
            .flatMap(n -> n.cautions().stream())
            .toList();
  }

  /** The last replan. */
  ReplanDesk.Rest sound() {
    return last;
  }

  /** How far everything had come at the last replan. */
  Optional<WeekState> lastState() {
    return Optional.ofNullable(last).map(rest -> rest.start().state());
  }

  /** The plan people worked by before the last replan. */
  PlanFile before() {
    return before;
  }

  /** Pieces of a part: in lots of the order (rework not among them), held, ordered. */
  record Sum(int inLots, int held, int missing, int scrapped, int ordered, boolean cancelled) {
    boolean holds() {
      int all = inLots + held + missing + scrapped;
      return cancelled ? all <= ordered : all == ordered;
    }
  }

  /** The sum rule, counted here from nothing but the brief, what is held and the orders. */
  Map<String, Sum> sums() {
    Map<String, Sum> sums = new HashMap<>();
    WeekInput input = input();
    for (Job job : input.jobs()) {
      for (PartLine line : job.parts()) {
        int inLots = 0;
        for (Lot lot : plan.brief().lots()) {
          boolean own =
              lot.jobId().equals(job.id()) && lot.partId().equals(line.id()) && lot.leg() == 0;
          inLots += own && !lot.id().contains("#r") ? lot.pieces() : 0;
        }
        int held = 0;
        int missing = 0;
        int scrapped = 0;
        for (Held each : last.start().week().held()) {
          if (each.jobId().equals(job.id()) && each.partId().equals(line.id())) {
            if (each.gate().equals("not-arrived")) {
              missing = each.pieces();
            } else if (each.gate().equals("scrapped")) {
              scrapped = each.pieces();
            } else if (!each.gate().startsWith("rework-")) {
              held = Math.max(held, each.pieces());
            }
          }
        }
        boolean cancelled =
            input.events().events().stream()
                .anyMatch(
                    e ->
                        e.kind() == EventKind.CANCELLED
                            && e.atMin() <= last.replanned().atMin()
                            && e.concerns(job.id(), line.id()));
        sums.put(
            job.id() + "/" + line.id(),
            new Sum(inLots, held, missing, scrapped, line.qty(), cancelled));
      }
    }
    return sums;
  }

  /** Every lot of the brief once in the plan or left out, none twice. */
  boolean everyLotOnce() {
    List<String> ids = new ArrayList<>();
    for (PlannedBatch batch : plan.plan().batches()) {
      batch.loads().forEach(l -> ids.addAll(l.lotIds()));
    }
    plan.plan().leftOut().forEach(l -> ids.add(l.lotId()));
    Set<String> once = new HashSet<>(ids);
    Set<String> wanted = new HashSet<>();
    plan.brief().lots().forEach(l -> wanted.add(l.id()));
    return once.size() == ids.size() && once.equals(wanted);
  }

  /** What the audit says of the plan against its own brief alone. */
  List<Finding> audit() {
    return Audit.of(plan.brief(), plan.plan());
  }

  Optional<PlannedLoad> load(String id) {
    return plan.plan().batches().stream()
        .flatMap(b -> b.loads().stream())
        .filter(l -> l.id().equals(id))
        .findFirst();
  }

  /** Loads of the plan that carry a part, with their batches. */
  List<LoadMatch.Spot> loadsOf(String job) {
    Set<String> lots = new HashSet<>();
    plan.brief().lots().stream().filter(l -> l.jobId().equals(job)).forEach(l -> lots.add(l.id()));
    List<LoadMatch.Spot> spots = new ArrayList<>();
    for (PlannedBatch batch : plan.plan().batches()) {
      batch.loads().stream()
          .filter(l -> l.lotIds().stream().anyMatch(lots::contains))
          .forEach(l -> spots.add(new LoadMatch.Spot(batch, l)));
    }
    return spots;
  }
}
