package spangle.plan.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import spangle.plan.Brief;
import spangle.plan.LoadTimes;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** Walks through the events in order of time. */
final class StateWalk {
  private static final String ALREADY =
      " already: nothing to report; where an earlier report is wrong, strike that one first";

  private final Brief brief;
  private final Plan plan;
  private final int known;
  private final Map<String, PlannedBatch> batchOfLoad = new HashMap<>();
  private final Map<String, PlannedLoad> loadById = new HashMap<>();
  private final Set<String> fixedBefore = new HashSet<>();
  private final Map<String, String> loadOfLot;
  private final Map<String, String> stepBefore = new HashMap<>();
  private final TreeMap<String, LoadState> loads = new TreeMap<>();
  private final TakingDown takingDown;
  private final Set<String> takenDown = new TreeSet<>();
  private final List<Down> down = new ArrayList<>();
  private final List<WeekState.Refusal> refused = new ArrayList<>();

  StateWalk(Brief brief, Plan plan, int known) {
    this.brief = brief;
    this.plan = plan;
    this.known = known;
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        batchOfLoad.put(load.id(), batch);
        loadById.put(load.id(), load);
        loads.put(load.id(), LoadState.planned(load.id(), batch.id()));
      }
    }
    brief.frozen().forEach(b -> b.loads().forEach(l -> fixedBefore.add(l.id())));
    loadOfLot = WeekState.loadOfLot(plan);
    takingDown = new TakingDown(brief, plan, known);
    brief.lots().forEach(l -> l.after().ifPresent(c -> stepBefore.put(l.id(), c.lotId())));
  }

  WeekState walk(List<Event> events, int atMin) {
    for (Event event : events) {
      if (event.kind().ofLoad()) {
        ofLoad(event);
      } else if (event.kind() == EventKind.BROKEN) {
        broken(event);
      } else if (event.kind() == EventKind.REPAIRED) {
        repaired(event);
      } else if (event.kind() == EventKind.AS_PLANNED) {
        asPlanned(event);
      }
    }
    PieceTally tally = new PieceTally(brief, plan, loads, events);
    List<PieceCount> pieces = tally.counts(refused);
    return new WeekState(
        atMin,
        loads,
        pieces,
        down.stream().filter(d -> d.untilMin() > atMin).toList(),
        tally.scrapped(),
        List.copyOf(takenDown),
        refused);
  }

  private void ofLoad(Event event) {
    List<String> ids = new ArrayList<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (batch.id().equals(event.load()) || load.id().equals(event.load())) {
          ids.add(load.id());
        }
      }
    }
    if (event.number() <= known) {
      ids.removeIf(id -> !fixedBefore.contains(id));
      if (ids.isEmpty()) {
        return;
      }
    } else if (ids.isEmpty()) {
      refuse(
          event,
          "the plan has no load or batch "
              + event.load()
              + ": give the number on the sheet, of the plan that is valid now");
      return;
    }
    for (String id : ids) {
      LoadState state = loads.get(id);
      if (state != null) {
        String why = contradiction(event, state);
        if (why.isEmpty() && event.kind() == EventKind.TAKEN_DOWN) {
          why = takingDown.against(event, state, down);
        }
        if (why.isEmpty() && hangs(event, state)) {
          why = carriedBy(id).map(o -> stillCarries(id, o)).orElse("");
        }
        if (why.isEmpty() && begins(event, state)) {
          why = suspectBefore(id).orElse("");
        }
        if (why.isEmpty()) {
          loads.put(id, after(event, state));
          if (event.kind() == EventKind.TAKEN_DOWN) {
            takenDown.add(id);
          } else if (loads.getOrDefault(id, state).stage().fixed()) {
            takenDown.remove(id);
          }
        } else {
          refuse(event, why);
        }
      }
    }
  }

  private static boolean hangs(Event event, LoadState state) {
    return !state.stage().fixed()
        && (event.kind() == EventKind.HUNG || event.kind() == EventKind.STARTED);
  }

  /** Whether its pieces leave the step before by what the event says. */
  private static boolean begins(Event event, LoadState state) {
    return hangs(event, state) || (!state.stage().fixed() && event.kind() == EventKind.DONE);
  }

  /** Why a load may not hang: pieces of it lie in a load that must be looked at first. */
  private Optional<String> suspectBefore(String id) {
    PlannedLoad load = loadById.get(id);
    if (load == null) {
      return Optional.empty();
    }
    return load.lotIds().stream()
        .flatMap(lot -> Stream.ofNullable(stepBefore.get(lot)))
        .flatMap(lot -> Stream.ofNullable(loadOfLot.get(lot)))
        .flatMap(before -> Stream.ofNullable(loads.get(before)))
        .filter(s -> !s.suspect().isEmpty())
        .findFirst()
        .map(
            s ->
                "the step before it, "
                    + s.load()
                    + ", is held ("
                    + s.suspect()
                    + "): inspect that one first");
  }

  private String stillCarries(String id, String other) {
    PlannedLoad load = loadById.get(id);
    return load == null
        ? ""
        : load.carrierId()
            + " number "
            + load.carrierNumber()
            + " still carries "
            + other
            + ": report that one done first";
  }

  /** The load that hangs on the same numbered carrier and is not off it. */
  private Optional<String> carriedBy(String id) {
    PlannedLoad load = loadById.get(id);
    return loads.values().stream()
        .filter(s -> s.stage() == Stage.HUNG || s.stage() == Stage.IN_PROCESS)
        .map(LoadState::load)
        .filter(o -> !o.equals(id))
        .filter(
            o -> {
              PlannedLoad other = loadById.get(o);
              return load != null
                  && other != null
                  && load.carrierNumber() > 0
                  && other.carrierNumber() == load.carrierNumber()
                  && other.carrierId().equals(load.carrierId());
            })
        .findFirst();
  }

  private static LoadState after(Event event, LoadState state) {
    return switch (event.kind()) {
      case RELEASED -> state.at(Stage.RELEASED, event.atMin());
      case WITHDRAWN -> state.at(Stage.PLANNED, event.atMin());
      case TAKEN_DOWN -> state.takenDown();
      case HUNG -> state.at(Stage.HUNG, event.atMin());
      case STARTED -> state.at(Stage.IN_PROCESS, event.atMin());
      case DONE -> state.at(Stage.DONE, event.atMin());
      case INSPECTED -> state.suspected("");
      default -> state;
    };
  }

  /** Why the event cannot be; empty where it can. A step that was not reported may be left out. */
  private static String contradiction(Event event, LoadState state) {
    Stage is = state.stage();
    String load = state.load() + " is " + is.words();
    return switch (event.kind()) {
      case RELEASED -> is == Stage.PLANNED ? "" : load + ALREADY;
      case TAKEN_DOWN ->
          is == Stage.HUNG
              ? ""
              : load
                  + (is.fixed()
                      ? ": what has begun is not taken down"
                      : ", it does not hang: nothing to take down"
                          + (is == Stage.RELEASED ? "; take the sheet back with withdrawn" : ""));
      case WITHDRAWN ->
          is == Stage.RELEASED
              ? ""
              : load
                  + (is.fixed()
                      ? "; what hangs is not taken back: report it taken-down, or strike the report where it"
                          + " does not hang"
                      : ", its sheet is not out: nothing to take back");
      case HUNG -> is.fixed() ? load + ALREADY : "";
      case STARTED -> is.compareTo(Stage.IN_PROCESS) >= 0 ? load + ALREADY : "";
      case DONE -> done(state, load);
      case INSPECTED ->
          state.suspect().isEmpty()
              ? state.load() + " is not under suspicion: nothing to inspect"
              : "";
      default -> "";
    };
  }

  private static String done(LoadState state, String load) {
    if (state.stage() == Stage.DONE) {
      return load + ALREADY;
    }
    return state.suspect().isEmpty()
        ? ""
        : state.load() + " is held (" + state.suspect() + "): inspect it first";
  }

  private void broken(Event event) {
    int until = event.figures().untilMin().orElse(Integer.MAX_VALUE);
    if (until <= event.atMin()) {
      refuse(event, "it would be repaired before it broke");
      return;
    }
    if (isDown(event.station(), event.atMin())) {
      refuse(
          event,
          event.station() + " is broken already: report it repaired, or strike the first report");
      return;
    }
    down.add(new Down(event.station(), event.atMin(), until, event.figures().count().orElse(0)));
    for (LoadState state : List.copyOf(loads.values())) {
      PlannedBatch batch = batchOfLoad.get(state.load());
      if (batch != null
          && state.stage() == Stage.IN_PROCESS
          && batch.machineId().equals(event.station())
          && outAt(batch, state) > event.atMin()) {
        loads.put(state.load(), state.suspected(event.station() + " broke down with it inside"));
      }
    }
  }

  /** When it comes out: as planned, or as much later as it was reported in. */
  private static int outAt(PlannedBatch batch, LoadState state) {
    OptionalInt started = state.startedMin();
    return started.isPresent()
        ? started.getAsInt() + batch.dwellMin()
        : batch.startMin() + batch.dwellMin();
  }

  private boolean isDown(String station, int minute) {
    return down.stream()
        .anyMatch(
            d -> d.stationId().equals(station) && d.fromMin() <= minute && d.untilMin() > minute);
  }

  private void repaired(Event event) {
    for (int i = 0; i < down.size(); i++) {
      Down each = down.get(i);
      if (each.stationId().equals(event.station())
          && each.fromMin() <= event.atMin()
          && each.untilMin() > event.atMin()) {
        down.set(i, new Down(each.stationId(), each.fromMin(), event.atMin(), each.places()));
        return;
      }
    }
    refuse(
        event,
        event.station()
            + " was not reported broken: name the station that was, or report that one broken"
            + " first");
  }

  /** Raises every load to the stage the plan has it at, unless a breakdown stood in its way. */
  private void asPlanned(Event event) {
    if (event.number() <= known && fixedBefore.isEmpty()) {
      return;
    }
    int now = event.atMin();
    for (String id : inTime()) {
      LoadState state = loads.getOrDefault(id, LoadState.planned(id, ""));
      PlannedBatch batch = batchOfLoad.get(id);
      PlannedLoad load = loadById.get(id);
      boolean counts = event.number() > known || fixedBefore.contains(state.load());
      boolean off = takenDown.contains(id);
      if (batch == null || load == null || !counts || off || !state.suspect().isEmpty()) {
        continue;
      }
      Stage stage = stageAt(batch, load, now);
      boolean carrierFree =
          state.stage().fixed() || (carriedBy(id).isEmpty() && suspectBefore(id).isEmpty());
      if (stage.compareTo(state.stage()) > 0 && carrierFree && !wasInTheWay(batch, load, now)) {
        loads.put(state.load(), raised(state, batch, load, stage));
      }
    }
  }

  /** Loads in the order in which they hang: a carrier is given on from one to the next. */
  private List<String> inTime() {
    List<String> ids = new ArrayList<>(loads.keySet());
    Comparator<String> byFirst =
        Comparator.comparingInt(
            id -> {
              PlannedBatch batch = batchOfLoad.get(id);
              PlannedLoad load = loadById.get(id);
              return batch == null || load == null ? 0 : LoadTimes.first(batch, load);
            });
    ids.sort(byFirst.thenComparing(Comparator.naturalOrder()));
    return ids;
  }

  private static LoadState raised(
      LoadState state, PlannedBatch batch, PlannedLoad load, Stage stage) {
    LoadState raised = state;
    if (state.stage().compareTo(Stage.HUNG) < 0) {
      raised = raised.at(Stage.HUNG, LoadTimes.first(batch, load));
    }
    if (stage.compareTo(Stage.IN_PROCESS) >= 0 && state.stage().compareTo(Stage.IN_PROCESS) < 0) {
      raised = raised.at(Stage.IN_PROCESS, batch.startMin());
    }
    return stage == Stage.DONE ? raised.at(Stage.DONE, LoadTimes.last(batch, load)) : raised;
  }

  private static Stage stageAt(PlannedBatch batch, PlannedLoad load, int now) {
    if (LoadTimes.last(batch, load) <= now) {
      return Stage.DONE;
    }
    if (batch.startMin() <= now) {
      return Stage.IN_PROCESS;
    }
    return LoadTimes.first(batch, load) < now ? Stage.HUNG : Stage.PLANNED;
  }

  private boolean wasInTheWay(PlannedBatch batch, PlannedLoad load, int now) {
    for (Down each : down) {
      if (each.stationId().equals(batch.machineId())
          && batch.startMin() < now
          && each.touches(batch.startMin(), batch.endMin())) {
        return true;
      }
      for (PlannedLoad.PlannedVisit visit : load.visits()) {
        if (each.stationId().equals(visit.stationId())
            && each.shuts(brief, visit.place())
            && visit.startMin() < now
            && each.touches(visit.startMin(), visit.endMin())) {
          return true;
        }
      }
    }
    return false;
  }

  private void refuse(Event event, String why) {
    refused.add(new WeekState.Refusal(event, why));
  }
}
