package spangle.plan.event;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.Brief;
import spangle.plan.LineSpec;
import spangle.plan.LoadTimes;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;

/**
 * When batches that cannot be moved any more really run: loads, carriers, machine and order stay,
 * and what lies ahead waits as little as it must for what is late, broken or in the way. Reports
 * are facts. What finds no time in the week hangs behind its horizon and keeps only its carrier.
 */
public final class Slippage {
  private final Brief brief;
  private final int atMin;
  private final ZincLevel zinc;
  private final Map<String, List<Span>> busy = new HashMap<>();
  private final Map<String, List<PlannedVisit>> passed = new HashMap<>();
  private final Map<String, WorkCalendar> calendars = new HashMap<>();
  private final Map<String, StationSpec> stations = new HashMap<>();
  private final Map<String, MachineSpec> machines = new HashMap<>();
  private final Map<String, LineSpec> lines = new HashMap<>();

  /**
   * For a week at a minute.
   *
   * @param brief the week with the hours its stations have now, breakdowns taken off
   * @param atMin nothing that has not been reported begins before it
   */
  public Slippage(Brief brief, int atMin) {
    this.brief = brief;
    this.atMin = atMin;
    this.zinc = new ZincLevel(brief);
    for (LineSpec line : brief.lines()) {
      lines.put(line.id(), line);
      Stream.concat(line.before().stream(), line.after().stream())
          .forEach(
              s -> {
                stations.put(s.id(), s);
                calendars.put(s.id(), s.calendar());
              });
      for (MachineSpec machine : line.machines()) {
        machines.put(machine.id(), machine);
        calendars.put(machine.id(), machine.calendar());
      }
    }
  }

  /** The batch as it runs; batches are asked for in the order of their starts. */
  public PlannedBatch settle(PlannedBatch planned, Map<String, LoadState> states) {
    PlannedBatch batch = Beyond.back(brief, atMin, planned, states);
    OptionalInt started = OptionalInt.empty();
    boolean inMachine = false;
    boolean allDone = true;
    int doneShift = Integer.MIN_VALUE;
    for (PlannedLoad load : batch.loads()) {
      LoadState state = states.get(load.id());
      Stage stage = state == null ? Stage.PLANNED : state.stage();
      inMachine |= stage.compareTo(Stage.IN_PROCESS) >= 0;
      allDone &= stage == Stage.DONE;
      if (state != null && state.startedMin().isPresent()) {
        started = state.startedMin();
      }
      if (state != null && state.doneMin().isPresent()) {
        int shift = state.doneMin().getAsInt() - LoadTimes.last(batch, load);
        doneShift = Math.max(doneShift, shift);
      }
    }
    PlannedBatch settled;
    if (allDone) {
      settled = fromZero(shifted(batch, doneShift, doneShift, load -> Integer.MIN_VALUE));
    } else if (inMachine) {
      int late = started.orElse(batch.startMin()) - batch.startMin();
      // In sooner than planned: all that came before was sooner too.
      settled =
          late < 0
              ? behind(fromZero(shifted(batch, late, late, load -> Integer.MIN_VALUE)), 0)
              : behind(batch, late);
    } else {
      settled = ahead(batch);
    }
    place(settled);
    return settled;
  }

  /** Whether it may stand as it is beside what has been settled, all of it still to come. */
  public boolean fits(PlannedBatch batch) {
    return LoadTimes.first(batch) >= atMin
        && setUpFirst(batch) >= atMin
        && free(batch, true)
        && carriersFree(batch)
        && noOvertaking(batch);
  }

  /** Takes a batch that stands as it is. */
  public void place(PlannedBatch batch) {
    if (!brief.isBeyond(batch.startMin())) {
      zinc.dipped(batch);
      MachineSpec machine = machines.get(batch.machineId());
      int turn = machine == null ? 0 : machine.turnaroundMin();
      busy(batch.machineId(), 0).add(new Span(batch.setupStartMin(), batch.endMin() + turn));
    }
    for (PlannedLoad load : batch.loads()) {
      busy("carrier " + load.carrierId(), load.carrierNumber())
          .add(new Span(LoadTimes.first(batch, load), LoadTimes.last(batch, load)));
      for (PlannedVisit visit : load.visits()) {
        if (!brief.isBeyond(visit.startMin())) {
          busy(visit.stationId(), visit.place())
              .add(new Span(visit.setupStartMin(), visit.endMin()));
          passed.computeIfAbsent(visit.stationId(), s -> new ArrayList<>()).add(visit);
        }
      }
    }
  }

  private boolean carriersFree(PlannedBatch batch) {
    return batch.loads().stream()
        .allMatch(
            l ->
                clear(
                    busy("carrier " + l.carrierId(), l.carrierNumber()),
                    new Span(LoadTimes.first(batch, l), LoadTimes.last(batch, l))));
  }

  private List<Span> busy(String station, int place) {
    return busy.computeIfAbsent(station + '\n' + place, k -> new ArrayList<>());
  }

  private static int setUpFirst(PlannedBatch batch) {
    int first = batch.setupStartMin();
    for (PlannedLoad load : batch.loads()) {
      for (PlannedVisit visit : load.visits()) {
        first = Math.min(first, visit.setupStartMin());
      }
    }
    return first;
  }

  /** It hangs and is not in the machine: everything not yet begun waits by the same minutes. */
  private PlannedBatch ahead(PlannedBatch batch) {
    ToIntFunction<PlannedLoad> from = load -> toCome(batch, load);
    int least = Math.max(0, atMin - batch.startMin());
    for (PlannedLoad load : batch.loads()) {
      int first = toCome(batch, load);
      least = first == Integer.MAX_VALUE ? least : Math.max(least, atMin - first);
    }
    for (int wait = least; batch.endMin() + wait <= brief.horizonMin(); wait++) {
      PlannedBatch later = rehoused(shifted(batch, wait, 0, from));
      if (free(later, false) && noOvertaking(later) && zinc.covers(later)) {
        PlannedBatch onward = onward(later, 0);
        return brief.isBeyond(Beyond.latestStart(onward)) ? stranded(batch, from) : onward;
      }
    }
    return stranded(batch, from);
  }

  /** It hangs and finds no time in the week: all that is to come stands behind the horizon. */
  private PlannedBatch stranded(PlannedBatch batch, ToIntFunction<PlannedLoad> from) {
    int first = batch.startMin();
    for (PlannedLoad load : batch.loads()) {
      first = Math.min(first, from.applyAsInt(load));
    }
    return onward(shifted(batch, brief.horizonMin() - first, 0, from), 0);
  }

  /**
   * The same batch with each stay behind the machine as soon as it can be: after the one before it,
   * not before its time, in the hours of its station and at a place that is free; behind the
   * horizon where it finds no time in the week.
   *
   * @param late how much later than planned the machine began; stays so begun before now are past
   */
  private PlannedBatch onward(PlannedBatch batch, int late) {
    List<PlannedLoad> loads = new ArrayList<>();
    List<PlannedVisit> taken = new ArrayList<>();
    for (PlannedLoad load : batch.loads()) {
      List<PlannedVisit> visits = new ArrayList<>();
      int from = batch.endMin();
      for (PlannedVisit each : load.visits()) {
        if (!isBehind(batch, each)) {
          visits.add(each);
          continue;
        }
        boolean past = each.startMin() + late < atMin && each.setupStartMin() + late >= from;
        int none = Math.max(from, brief.horizonMin()) - each.setupStartMin();
        PlannedVisit stay =
            past ? each.later(late) : soonest(each, from, taken).orElseGet(() -> each.later(none));
        visits.add(stay);
        taken.add(stay);
        from = stay.endMin();
      }
      loads.add(load.visiting(visits));
    }
    return batch.later(0, loads);
  }

  private Optional<PlannedVisit> soonest(PlannedVisit each, int fromMin, List<PlannedVisit> taken) {
    int least = Math.max(Math.max(fromMin, atMin) - each.setupStartMin(), 0);
    for (int wait = least; each.endMin() + wait <= brief.horizonMin(); wait++) {
      PlannedVisit later = each.later(wait);
      if (open(later.stationId(), later.startMin(), later.endMin())) {
        PlannedVisit housed = isFree(later, taken) ? later : elsewhere(later, taken);
        if (isFree(housed, taken)) {
          return Optional.of(housed);
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(PlannedVisit visit, List<PlannedVisit> taken) {
    Span stay = new Span(visit.setupStartMin(), visit.endMin());
    return !out(visit)
        && alone(visit, taken)
        && clear(busy(visit.stationId(), visit.place()), stay);
  }

  private static boolean alone(PlannedVisit visit, List<PlannedVisit> others) {
    return others.stream()
        .filter(v -> v.stationId().equals(visit.stationId()) && v.place() == visit.place())
        .noneMatch(v -> v.setupStartMin() < visit.endMin() && v.endMin() > visit.setupStartMin());
  }

  /** Start of the first stay ahead of the machine that has not begun, or could not. */
  private int toCome(PlannedBatch batch, PlannedLoad load) {
    return load.visits().stream()
        .filter(v -> !isBehind(batch, v))
        .filter(v -> v.startMin() >= atMin || !open(v.stationId(), v.startMin(), v.endMin()))
        .mapToInt(PlannedVisit::startMin)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  private boolean isBehind(PlannedBatch batch, PlannedVisit visit) {
    LineSpec line = lines.get(batch.lineId());
    return line != null && line.after().stream().anyMatch(s -> s.id().equals(visit.stationId()));
  }

  /** It went into the machine so much later than planned: what follows waits as it must. */
  private PlannedBatch behind(PlannedBatch batch, int late) {
    return onward(shifted(batch, late, 0, load -> Integer.MAX_VALUE), late);
  }

  /** Machine, and stays ahead of it from some minute on, by so much; stays behind it by so much. */
  private PlannedBatch shifted(
      PlannedBatch batch, int machine, int behindBy, ToIntFunction<PlannedLoad> from) {
    List<PlannedLoad> loads = new ArrayList<>();
    for (PlannedLoad load : batch.loads()) {
      int first = from.applyAsInt(load);
      List<PlannedVisit> visits = new ArrayList<>();
      for (PlannedVisit each : load.visits()) {
        boolean behind = isBehind(batch, each);
        visits.add(
            behind ? each.later(behindBy) : each.startMin() >= first ? each.later(machine) : each);
      }
      loads.add(load.visiting(visits));
    }
    return batch.later(machine, loads);
  }

  /** What was done long before its time did not begin before the week did: then at once. */
  private PlannedBatch fromZero(PlannedBatch batch) {
    if (setUpFirst(batch) >= 0) {
      return batch;
    }
    int machine = Math.max(0, -batch.setupStartMin());
    for (PlannedLoad load : batch.loads()) {
      for (PlannedVisit each : oneByOne(batch, load, false, 0)) {
        machine = Math.max(machine, each.endMin() - batch.setupStartMin());
      }
    }
    List<PlannedLoad> loads = new ArrayList<>();
    for (PlannedLoad load : batch.loads()) {
      List<PlannedVisit> visits = new ArrayList<>(oneByOne(batch, load, false, 0));
      visits.addAll(oneByOne(batch, load, true, batch.endMin() + machine));
      loads.add(load.visiting(visits));
    }
    return batch.later(machine, loads);
  }

  /** The stays on one side of the machine, none before that minute or the end of the last. */
  private List<PlannedVisit> oneByOne(
      PlannedBatch batch, PlannedLoad load, boolean behind, int fromMin) {
    int free = fromMin;
    List<PlannedVisit> visits = new ArrayList<>();
    for (PlannedVisit each : load.visits()) {
      if (isBehind(batch, each) == behind) {
        PlannedVisit later = each.later(Math.max(0, free - each.setupStartMin()));
        visits.add(later);
        free = later.endMin();
      }
    }
    return visits;
  }

  private boolean free(PlannedBatch batch, boolean alsoBehind) {
    MachineSpec machine = machines.get(batch.machineId());
    int turn = machine == null ? 0 : machine.turnaroundMin();
    Span stay = new Span(batch.setupStartMin(), batch.endMin() + turn);
    return open(batch.machineId(), batch.startMin(), batch.endMin())
        && clear(busy(batch.machineId(), 0), stay)
        && visitsFree(batch, alsoBehind);
  }

  private boolean visitsFree(PlannedBatch batch, boolean alsoBehind) {
    for (PlannedLoad load : batch.loads()) {
      for (PlannedVisit visit : load.visits()) {
        if (visit.startMin() < atMin || (isBehind(batch, visit) && !alsoBehind)) {
          continue;
        }
        Span stay = new Span(visit.setupStartMin(), visit.endMin());
        if (!open(visit.stationId(), visit.startMin(), visit.endMin())
            || out(visit)
            || !clear(busy(visit.stationId(), visit.place()), stay)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Stays to come at places that are out of use take another that is free. */
  private PlannedBatch rehoused(PlannedBatch batch) {
    List<PlannedLoad> loads = new ArrayList<>(batch.loads());
    for (int i = 0; i < loads.size(); i++) {
      List<PlannedVisit> visits = new ArrayList<>(loads.get(i).visits());
      for (int k = 0; k < visits.size(); k++) {
        PlannedVisit visit = visits.get(k);
        if (visit.startMin() >= atMin && out(visit)) {
          visits.set(
              k, elsewhere(visit, loads.stream().flatMap(l -> l.visits().stream()).toList()));
        }
      }
      loads.set(i, loads.get(i).visiting(visits));
    }
    return loads.equals(batch.loads()) ? batch : batch.later(0, loads);
  }

  /** The same stay at the first place that is free of other work; as it was where none is. */
  private PlannedVisit elsewhere(PlannedVisit visit, List<PlannedVisit> company) {
    StationSpec station = stations.get(visit.stationId());
    Span stay = new Span(visit.setupStartMin(), visit.endMin());
    for (int place = 1; station != null && place <= station.alike(); place++) {
      PlannedVisit other =
          new PlannedVisit(
              visit.stationId(), place, visit.setupStartMin(), visit.startMin(), visit.endMin());
      if (!out(other) && alone(other, company) && clear(busy(other.stationId(), place), stay)) {
        return other;
      }
    }
    return visit;
  }

  /** Whether its place is out of use while the others work. */
  private boolean out(PlannedVisit visit) {
    StationSpec station = stations.get(visit.stationId());
    return station != null && station.isOut(visit.place(), visit.setupStartMin(), visit.endMin());
  }

  private boolean open(String station, int startMin, int endMin) {
    WorkCalendar calendar = calendars.get(station);
    return calendar == null || calendar.holds(startMin, endMin);
  }

  private static boolean clear(List<Span> busy, Span stay) {
    return busy.stream()
        .noneMatch(b -> b.startMin() < stay.endMin() && b.endMin() > stay.startMin());
  }

  /** Ahead of the machine it stays behind all that has been placed on its line. */
  private boolean noOvertaking(PlannedBatch batch) {
    return visitsAhead(batch)
        .allMatch(
            v ->
                passed.getOrDefault(v.stationId(), List.of()).stream()
                    .allMatch(p -> p.startMin() <= v.startMin()));
  }

  private Stream<PlannedVisit> visitsAhead(PlannedBatch batch) {
    return batch.loads().stream()
        .flatMap(l -> l.visits().stream())
        .filter(v -> !isBehind(batch, v) && v.startMin() >= atMin);
  }
}
