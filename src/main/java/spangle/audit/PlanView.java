package spangle.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;

/**
 * A plan and its brief, with names looked up. Only batches whose every name is known are seen here:
 * the others are findings of {@link NamesKnown} and nothing more can be said of them.
 */
final class PlanView {
  private final Brief brief;
  private final Plan plan;
  private final Map<String, Lot> lots = new LinkedHashMap<>();
  private final Map<String, LineSpec> lines = new LinkedHashMap<>();
  private final Map<String, CarrierSpec> carriers = new LinkedHashMap<>();
  private final List<BatchView> batches = new ArrayList<>();
  private final List<LoadView> loads = new ArrayList<>();
  private final Map<String, LoadView> loadByLot = new LinkedHashMap<>();
  private final Map<String, List<BatchView>> byMachine = new LinkedHashMap<>();
  private final Map<Place, List<VisitView>> byPlace = new LinkedHashMap<>();

  /** One of the places of a station. */
  record Place(String stationId, int number) {}

  PlanView(Brief brief, Plan plan) {
    this.brief = brief;
    this.plan = plan;
    brief.lots().forEach(lot -> lots.putIfAbsent(lot.id(), lot));
    brief.lines().forEach(line -> lines.putIfAbsent(line.id(), line));
    brief.carriers().forEach(carrier -> carriers.putIfAbsent(carrier.id(), carrier));
    Set<PlannedBatch> frozen = new HashSet<>(brief.frozen());
    for (PlannedBatch batch : plan.batches()) {
      BatchView view = look(batch, frozen.contains(batch));
      if (view != null) {
        batches.add(view);
        loads.addAll(view.loads());
      }
    }
    for (LoadView load : loads) {
      load.lots().forEach(lot -> loadByLot.putIfAbsent(lot.id(), load));
    }
    arrangeByMachine();
    arrangeByPlace();
  }

  private @Nullable BatchView look(PlannedBatch batch, boolean frozen) {
    if (!NamesKnown.unknownIn(this, batch).isEmpty()) {
      return null;
    }
    LineSpec line = line(batch.lineId()).orElseThrow();
    MachineSpec machine = machine(line, batch.machineId()).orElseThrow();
    List<LoadView> views = new ArrayList<>();
    for (PlannedLoad load : batch.loads()) {
      CarrierSpec carrier = carrier(load.carrierId()).orElseThrow();
      List<Lot> hung = load.lotIds().stream().map(id -> lot(id).orElseThrow()).toList();
      views.add(new LoadView(load, batch, line, carrier, hung, frozen));
    }
    return new BatchView(batch, line, machine, List.copyOf(views), frozen);
  }

  private void arrangeByMachine() {
    for (BatchView batch : batches) {
      byMachine.computeIfAbsent(batch.machine().id(), id -> new ArrayList<>()).add(batch);
    }
    Comparator<BatchView> order =
        Comparator.<BatchView>comparingInt(view -> view.batch().startMin())
            .thenComparingInt(view -> view.batch().endMin());
    byMachine.values().forEach(row -> row.sort(order));
  }

  private void arrangeByPlace() {
    for (LoadView load : loads) {
      for (VisitView visit : visits(load)) {
        Place place = new Place(visit.station().id(), visit.visit().place());
        byPlace.computeIfAbsent(place, p -> new ArrayList<>()).add(visit);
      }
    }
    Comparator<VisitView> order =
        Comparator.<VisitView>comparingInt(view -> view.visit().startMin())
            .thenComparingInt(view -> view.visit().endMin());
    byPlace.values().forEach(row -> row.sort(order));
  }

  Brief brief() {
    return brief;
  }

  Plan plan() {
    return plan;
  }

  Optional<Lot> lot(String id) {
    return Optional.ofNullable(lots.get(id));
  }

  Optional<LineSpec> line(String id) {
    return Optional.ofNullable(lines.get(id));
  }

  Optional<CarrierSpec> carrier(String id) {
    return Optional.ofNullable(carriers.get(id));
  }

  static Optional<MachineSpec> machine(LineSpec line, String id) {
    return line.machines().stream().filter(machine -> machine.id().equals(id)).findFirst();
  }

  /** A station beside the machine, ahead of it or behind it. */
  static Optional<StationSpec> station(LineSpec line, String id) {
    return beside(line).stream().filter(station -> station.id().equals(id)).findFirst();
  }

  /** Stations ahead of the machine, then those behind it. */
  static List<StationSpec> beside(LineSpec line) {
    List<StationSpec> all = new ArrayList<>(line.before());
    all.addAll(line.after());
    return all;
  }

  /** Batches in the plan's order. */
  List<BatchView> batches() {
    return Collections.unmodifiableList(batches);
  }

  /** Batches that the plan may still change. */
  List<BatchView> openBatches() {
    return batches.stream().filter(batch -> !batch.frozen()).toList();
  }

  /** Loads in the plan's order. */
  List<LoadView> loads() {
    return Collections.unmodifiableList(loads);
  }

  /** Loads that the plan may still change. */
  List<LoadView> openLoads() {
    return loads.stream().filter(load -> !load.frozen()).toList();
  }

  /** The load a lot is in. */
  Optional<LoadView> loadOf(String lotId) {
    return Optional.ofNullable(loadByLot.get(lotId));
  }

  /** Each machine's batches by start. */
  Map<String, List<BatchView>> byMachine() {
    return Collections.unmodifiableMap(byMachine);
  }

  /** Each station place's visits by start. */
  Map<Place, List<VisitView>> byPlace() {
    return Collections.unmodifiableMap(byPlace);
  }

  /** A load's visits in the plan's order. */
  static List<VisitView> visits(LoadView load) {
    List<VisitView> visits = new ArrayList<>();
    for (PlannedVisit visit : load.load().visits()) {
      StationSpec station = station(load.line(), visit.stationId()).orElseThrow();
      visits.add(new VisitView(load, visit, station));
    }
    return visits;
  }
}
