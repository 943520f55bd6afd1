package spangle.plan.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spangle.plan.Brief;
import spangle.plan.LineSpec;
import spangle.plan.MachineSpec;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;

/** What stands against taking a load that hangs off its carrier: its route has begun. */
final class TakingDown {
  private final Brief brief;
  private final Plan plan;
  private final int known;
  private final Map<String, String> loadOfLot;
  private final Map<String, String> stepBefore = new HashMap<>();

  /**
   * For loads of one plan.
   *
   * @param known number of the last event the plan was made with: what it did not take down then
   *     went on
   */
  TakingDown(Brief brief, Plan plan, int known) {
    this.brief = brief;
    this.plan = plan;
    this.known = known;
    this.loadOfLot = WeekState.loadOfLot(plan);
    brief.lots().forEach(l -> l.after().ifPresent(c -> stepBefore.put(l.id(), c.lotId())));
  }

  /** A stay still to come; an oven or kettle has one place. */
  private record Stay(String station, int place, int startMin) {}

  /** Why it cannot be, in words; empty where it can. */
  String against(Event event, LoadState state, List<Down> down) {
    String id = state.load();
    if (event.number() <= known) {
      return id + " went on by the plan that knew of it: strike the report";
    }
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (load.id().equals(id)) {
          return against(event, batch, load, state, down);
        }
      }
    }
    return "";
  }

  private String against(
      Event event, PlannedBatch batch, PlannedLoad load, LoadState state, List<Down> down) {
    Optional<String> before =
        load.lotIds().stream()
            .flatMap(lot -> Stream.ofNullable(stepBefore.get(lot)))
            .flatMap(lot -> Stream.ofNullable(loadOfLot.get(lot)))
            .findFirst();
    if (before.isPresent()) {
      return load.id()
          + " carries pieces of "
          + before.get()
          + ", the step before it: their route has begun and goes on";
    }
    return begun(batch, load, state, down, event.atMin())
        .map(
            station ->
                station
                    + " has begun with "
                    + load.id()
                    + " by then: it goes on; where it is spoilt report it done, then rejected")
        .orElse("");
  }

  /**
   * The first station that has begun, in words; empty where none has. The first stay is the hanging
   * itself. A load that was hung later than planned is at the next station so much later, and at
   * one that is broken when it comes there once that works again.
   */
  private Optional<String> begun(
      PlannedBatch batch, PlannedLoad load, LoadState state, List<Down> down, int atMin) {
    List<PlannedVisit> visits = load.visits();
    int hungBy = visits.isEmpty() ? batch.startMin() : visits.get(0).endMin();
    int late = Math.max(0, state.hungMin().orElse(hungBy) - hungBy);
    List<Stay> stays = new ArrayList<>();
    visits.stream()
        .skip(1)
        .forEach(v -> stays.add(new Stay(v.stationId(), v.place(), v.startMin() + late)));
    stays.add(new Stay(batch.machineId(), 1, batch.startMin() + late));
    stays.sort(Comparator.comparingInt(Stay::startMin));
    Stay first = stays.get(0);
    int begins = first.startMin();
    for (Down each : down) {
      boolean stands = each.fromMin() <= begins && begins < each.untilMin();
      if (each.stationId().equals(first.station()) && each.shuts(brief, first.place()) && stands) {
        begins = each.untilMin();
      }
    }
    return begins > atMin ? Optional.empty() : Optional.of(name(first.station()));
  }

  private String name(String id) {
    for (LineSpec line : brief.lines()) {
      for (MachineSpec machine : line.machines()) {
        if (machine.id().equals(id)) {
          return machine.name();
        }
      }
      for (StationSpec station :
          Stream.concat(line.before().stream(), line.after().stream()).toList()) {
        if (station.id().equals(id)) {
          return station.name();
        }
      }
    }
    return id;
  }
}
