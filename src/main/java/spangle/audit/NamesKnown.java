package spangle.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;

/** Every line, machine, setting, station, carrier and lot a plan names is one of its brief. */
final class NamesKnown extends Rule {
  NamesKnown() {
    super(
        "names-known",
        "Everything the plan names is in its brief, and no number stands for two batches or loads.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    Set<String> batches = new HashSet<>();
    Set<String> loads = new HashSet<>();
    for (PlannedBatch batch : view.plan().batches()) {
      if (!batches.add(batch.id())) {
        findings.add(batch.id(), "two batches carry this number");
      }
      for (PlannedLoad load : batch.loads()) {
        if (!loads.add(load.id())) {
          findings.add(load.id(), "two loads carry this number");
        }
      }
      unknownIn(view, batch).forEach(words -> findings.add(batch.id(), words));
    }
  }

  /** What a batch names that the brief does not know, in words. */
  static List<String> unknownIn(PlanView view, PlannedBatch batch) {
    Optional<LineSpec> line = view.line(batch.lineId());
    if (line.isEmpty()) {
      return List.of("the brief knows no line \"" + batch.lineId() + "\"");
    }
    List<String> unknown = new ArrayList<>();
    if (PlanView.machine(line.get(), batch.machineId()).isEmpty()) {
      unknown.add(batch.lineId() + " has no machine \"" + batch.machineId() + "\"");
    }
    if (line.get().settings().stream().noneMatch(s -> s.index() == batch.setting())) {
      unknown.add(batch.lineId() + " has no setting number " + batch.setting());
    }
    if (batch.loads().isEmpty()) {
      unknown.add("the batch holds no load");
    }
    for (PlannedLoad load : batch.loads()) {
      unknownIn(view, line.get(), load, unknown);
    }
    return unknown;
  }

  private static void unknownIn(
      PlanView view, LineSpec line, PlannedLoad load, List<String> unknown) {
    if (view.carrier(load.carrierId()).isEmpty()) {
      unknown.add(load.id() + ": the brief knows no carrier \"" + load.carrierId() + "\"");
    }
    if (load.lotIds().isEmpty()) {
      unknown.add(load.id() + ": nothing hangs on it");
    }
    List<Lot> lots = new ArrayList<>();
    for (String id : load.lotIds()) {
      Optional<Lot> lot = view.lot(id);
      lot.ifPresentOrElse(
          lots::add, () -> unknown.add(load.id() + ": the brief knows no lot \"" + id + "\""));
    }
    for (PlannedVisit visit : load.visits()) {
      Optional<StationSpec> station = PlanView.station(line, visit.stationId());
      if (station.isEmpty()) {
        unknown.add(load.id() + ": " + line.id() + " has no station \"" + visit.stationId() + "\"");
        continue;
      }
      int states = station.get().setups().states().size();
      for (Lot lot : lots) {
        if (states > 1 && (lot.finish().index() < 0 || lot.finish().index() >= states)) {
          unknown.add(
              load.id() + ": " + visit.stationId() + " has no state for " + lot.finish().name());
        }
      }
    }
  }
}
