package spangle.plan.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spangle.plan.Brief;
import spangle.plan.LineSpec;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;

/** Whether a station has begun with a load that hangs: by the plan, and by what was reported. */
final class Begun {
  private final Brief brief;

  Begun(Brief brief) {
    this.brief = brief;
  }

  private record Stay(String station, int startMin) {}

  /**
   * The first station that has begun, in words; empty where none has. The first stay is the hanging
   * itself. A load that was hung later than planned is at each station so much later, and at one
   * that is broken when it comes there, once that works again.
   */
  Optional<String> with(
      PlannedBatch batch, PlannedLoad load, LoadState state, List<Down> down, int atMin) {
    List<PlannedVisit> visits = load.visits();
    int hungBy = visits.isEmpty() ? batch.startMin() : visits.get(0).endMin();
    int late = Math.max(0, state.hungMin().orElse(hungBy) - hungBy);
    List<Stay> stays = new ArrayList<>();
    visits.stream().skip(1).forEach(v -> stays.add(new Stay(v.stationId(), v.startMin() + late)));
    stays.add(new Stay(batch.machineId(), batch.startMin() + late));
    stays.sort(Comparator.comparingInt(Stay::startMin));
    Stay first = stays.get(0);
    int begins = first.startMin();
    for (Down each : down) {
      boolean stands = each.fromMin() <= begins && begins < each.untilMin();
      if (each.stationId().equals(first.station()) && stands) {
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
