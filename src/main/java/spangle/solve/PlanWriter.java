package spangle.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.plan.LeftOut;
import spangle.plan.LineKind;
import spangle.plan.Plan;
import spangle.plan.PlanFigures;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.SolveNote;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LineFacts;
import spangle.plan.clock.LinePlan;
import spangle.plan.clock.Load;
import spangle.plan.clock.Passage;
import spangle.plan.clock.Row;
import spangle.plan.clock.Tally;
import spangle.plan.clock.WeekPlan;

/** Writes a week the search found as the plan everybody reads. */
final class PlanWriter {
  private final Floor floor;
  private final WeekPlan week;
  private final LeftOuts leftOuts;
  private final Set<String> usedIds = new HashSet<>();
  private final Map<String, Integer> lastNumber = new HashMap<>();
  private final CarrierNumbers carriers;
  private final Patterns patterns;
  private final KnownNumbers known;

  PlanWriter(WeekPlan week) {
    this(week, Map.of(), List.of());
  }

  /**
   * For a week some of whose lots stand in no row.
   *
   * @param outside why, by lot
   */
  PlanWriter(WeekPlan week, Map<String, LeftOut> outside) {
    this(week, outside, List.of());
  }

  /** A writer that gives loads of an earlier plan their numbers again. */
  PlanWriter(WeekPlan week, Map<String, LeftOut> outside, List<PlannedBatch> earlier) {
    this.week = week;
    this.leftOuts = new LeftOuts(week, outside);
    this.floor = week.floor;
    this.carriers = new CarrierNumbers(floor);
    this.patterns = new Patterns(floor);
    this.known = new KnownNumbers(floor, earlier);
    usedIds.addAll(known.all());
    usedIds.addAll(floor.brief.retired());
    floor
        .brief
        .frozen()
        .forEach(
            batch -> {
              usedIds.add(batch.id());
              batch.loads().forEach(load -> usedIds.add(load.id()));
            });
  }

  /** A batch with its place and times, before it is written. */
  private record Timed(
      Batch batch, int machine, int setupStart, int start, Optional<Passage> passage) {}

  Plan write(SolveNote note) {
    List<PlannedBatch> batches = new ArrayList<>();
    for (LineFacts line : floor.lines) {
      List<Timed> timed = timed(line, week.line(line.index));
      Map<Timed, List<PlannedLoad>> loads = loads(line, timed);
      timed.sort(Comparator.comparingInt(Timed::machine).thenComparingInt(Timed::start));
      int number = 0;
      int machine = -1;
      for (Timed each : timed) {
        number = each.machine() == machine ? number + 1 : 1;
        machine = each.machine();
        batches.add(write(line, each, number, loads.getOrDefault(each, List.of())));
      }
    }
    return new Plan(batches, leftOuts.list(), figures(), note);
  }

  private List<Timed> timed(LineFacts line, LinePlan plan) {
    List<Timed> timed = new ArrayList<>();
    for (int k = 0; k < plan.fed(); k++) {
      Passage passage = plan.passage(k);
      if (passage.runs()) {
        timed.add(
            new Timed(
                passage.batch,
                passage.machine,
                passage.setupStart,
                passage.start,
                Optional.of(passage)));
      }
    }
    if (plan.fed() > 0) {
      return timed;
    }
    for (int m = 0; m < plan.size(); m++) {
      Row row = plan.row(m);
      int setting = line.machines[m].spec.initialSetting();
      for (int k = 0; k < row.size(); k++) {
        if (row.runs(k)) {
          Batch batch = row.batch(k);
          int setup = line.settingMin[setting][batch.setting];
          timed.add(new Timed(batch, m, row.start(k) - setup, row.start(k), Optional.empty()));
          setting = batch.setting;
        }
      }
    }
    timed.sort(Comparator.comparingInt(Timed::start).thenComparingInt(Timed::machine));
    return timed;
  }

  /** Loads are numbered in the order they are fed to the line. */
  private Map<Timed, List<PlannedLoad>> loads(LineFacts line, List<Timed> timed) {
    List<KnownNumbers.Wanted> wanted = new ArrayList<>();
    for (Timed each : timed) {
      if (each.batch().frozen.isEmpty()) {
        String machine = line.machines[each.machine()].spec.id();
        for (int i = 0; i < each.batch().loads.length; i++) {
          int load = i;
          int first = each.passage().map(p -> p.loadFirst(load)).orElse(each.start());
          Load hung = each.batch().loads[i];
          wanted.add(new KnownNumbers.Wanted(hung, machine, each.start(), first));
        }
      }
    }
    Iterator<Optional<String>> numbers = known.of(line.spec.id(), wanted).iterator();
    Map<Timed, List<PlannedLoad>> written = new HashMap<>();
    for (Timed each : timed) {
      if (each.batch().frozen.isEmpty()) {
        List<PlannedLoad> loads = new ArrayList<>();
        for (int i = 0; i < each.batch().loads.length; i++) {
          loads.add(write(line, each, i, numbers.next()));
        }
        written.put(each, loads);
      }
    }
    return written;
  }

  private PlannedLoad write(LineFacts line, Timed timed, int i, Optional<String> numberBefore) {
    Load load = timed.batch().loads[i];
    List<PlannedLoad.PlannedVisit> visits = new ArrayList<>();
    int number;
    if (timed.passage().isPresent()) {
      Passage passage = timed.passage().get();
      for (int s = 0; s < line.stationCount(); s++) {
        if (passage.place(i, s) > 0) {
          visits.add(
              new PlannedLoad.PlannedVisit(
                  line.stationId(s),
                  passage.place(i, s),
                  passage.visitSetupStart(i, s),
                  passage.visitStart(i, s),
                  passage.visitEnd(i, s)));
        }
      }
      number = passage.carrierNumber(i);
    } else {
      number = 0;
    }
    List<String> lots = new ArrayList<>();
    for (int lot : load.lots) {
      lots.add(floor.lots[lot].lot.id());
    }
    return new PlannedLoad(
        numberBefore.orElseGet(() -> nextLoadId(line.spec.kind())),
        floor.carriers[load.carrier].spec.id(),
        number > 0 ? number : carriers.next(load.carrier),
        lots,
        visits,
        patterns.of(load));
  }

  private String nextLoadId(LineKind kind) {
    String letter =
        switch (kind) {
          case POWDER -> "P";
          case LIQUID -> "L";
          case ZINC -> "Z";
          case OUTSIDE -> "X";
        };
    while (true) {
      int number = lastNumber.merge(letter, 1, Integer::sum);
      String id = letter + (number < 10 ? "0" : "") + number;
      if (usedIds.add(id)) {
        return id;
      }
    }
  }

  private PlannedBatch write(LineFacts line, Timed timed, int number, List<PlannedLoad> loads) {
    if (timed.batch().frozen.isPresent()) {
      return timed.batch().frozen.get();
    }
    String machine = line.machines[timed.machine()].spec.id();
    String id = machine + " #" + number;
    while (!usedIds.add(id)) {
      id = id + "'";
    }
    return new PlannedBatch(
        id,
        line.spec.id(),
        machine,
        timed.batch().setting,
        timed.setupStart(),
        timed.start(),
        timed.start() + timed.batch().dwell,
        loads);
  }

  private PlanFigures figures() {
    long unplaceable = LeftOuts.weightWithoutPlace(floor);
    long leftOut = week.left() + unplaceable + leftOuts.outsideWeight();
    return new PlanFigures(
        week.term(Tally.RUN),
        week.term(Tally.LATE_LOTS),
        week.term(Tally.LATE_MIN),
        week.term(Tally.SETTING_COST),
        week.term(Tally.SETTING_MIN),
        week.term(Tally.COLOUR_COST),
        (int) week.term(Tally.COLOUR_CHANGES),
        (int) week.term(Tally.LOADS),
        (int) week.term(Tally.BATCHES),
        week.term(Tally.LATE_KITS),
        week.term(Tally.KIT_MIN),
        week.term(Tally.SET_MIN),
        (int) week.term(Tally.TRIPS),
        leftOut,
        (int) week.term(Tally.MOVED),
        week.weighed() + floor.goals.leftOut() * leftOut);
  }
}
