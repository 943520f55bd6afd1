package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.BathSpec;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;
import spangle.plan.event.ZincLevel;

/**
 * Loads that hang and find no time in the week any more: what stands in their way, and what a
 * person can do. That damp flux spits in molten zinc and that washed or pickled steel rusts while
 * it waits is common knowledge of the trade.
 */
final class StrandedLoads {
  private final Brief brief;
  private final Plan plan;
  private final int atMin;
  private final Map<String, Lot> lots = new HashMap<>();

  private StrandedLoads(Brief brief, Plan plan, int atMin) {
    this.brief = brief;
    this.plan = plan;
    this.atMin = atMin;
    brief.lots().forEach(l -> lots.put(l.id(), l));
  }

  /** All of them, in the order of the plan. */
  static List<HeldLoad> of(Brief brief, Plan plan, int atMin) {
    return new StrandedLoads(brief, plan, atMin).found();
  }

  /** Whether a load that hangs has a stay that is not in this week. */
  static boolean waits(Brief brief, PlannedBatch batch, PlannedLoad load) {
    return brief.isBeyond(batch.startMin())
        || load.visits().stream().anyMatch(v -> brief.isBeyond(v.startMin()));
  }

  private List<HeldLoad> found() {
    List<HeldLoad> found = new ArrayList<>();
    for (PlannedBatch batch : brief.frozen()) {
      for (PlannedLoad load : batch.loads()) {
        if (waits(brief, batch, load)) {
          found.add(held(batch, load));
        }
      }
    }
    return found;
  }

  private HeldLoad held(PlannedBatch batch, PlannedLoad load) {
    List<Lot> on = load.lotIds().stream().map(lots::get).filter(Objects::nonNull).toList();
    FinishKind kind = on.isEmpty() ? FinishKind.POWDER : on.get(0).finish().kind();
    Optional<String> low = tooLow(batch);
    Optional<String> shut = low.isPresent() ? Optional.empty() : shut(batch, load);
    String why = low.or(() -> shut).orElse("no time is left for it before the week ends");
    String first =
        low.isPresent()
            ? "it is not dipped; fill the bath with dry zinc by the local code and report level"
                + " station="
                + batch.machineId()
                + " with the new mark, or plan the filling in shop.yaml (top_up: yes); then replan"
            : shut.isPresent()
                ? "report it repaired, or the new end, and replan"
                : "overtime, or the first load of next week";
    return new HeldLoad(
        load.id(),
        HeldLoad.Kind.WAITS,
        why,
        kind == FinishKind.ZINC ? "The kettle lead" : "The supervisor",
        first + "; " + meanwhile(kind),
        on);
  }

  private static String meanwhile(FinishKind kind) {
    return switch (kind) {
      case ZINC ->
          "what has been pickled rusts and what has been fluxed draws damp, which spits in molten"
              + " zinc: look at it and dry it again before it goes in";
      case POWDER, LIQUID ->
          "what has been washed rusts and what has been sprayed gathers dust: look at it before it"
              + " goes on";
      case DEGAS -> "look at it before it goes on";
    };
  }

  /** The zinc, where it never covers this work again by what is known. */
  private Optional<String> tooLow(PlannedBatch batch) {
    if (!brief.isBeyond(batch.startMin())) {
      return Optional.empty();
    }
    ZincLevel level = new ZincLevel(brief);
    plan.batches().stream().filter(b -> !brief.isBeyond(b.startMin())).forEach(level::dipped);
    for (BathSpec bath : brief.baths()) {
      OptionalDouble spare =
          batch.loads().stream()
              .flatMap(l -> l.lotIds().stream())
              .map(bath::spareMm)
              .filter(OptionalDouble::isPresent)
              .mapToDouble(OptionalDouble::getAsDouble)
              .min();
      double down = level.downMm(bath, atMin);
      if (bath.machineId().equals(batch.machineId())
          && spare.isPresent()
          && down > spare.getAsDouble()) {
        return Optional.of(
            String.format(
                Locale.ROOT,
                "the zinc stands %.0f mm below its mark and covers this work only down to %.0f mm",
                down,
                spare.getAsDouble()));
      }
    }
    return Optional.empty();
  }

  /** The first station or machine ahead of it that does not work long enough this week. */
  private Optional<String> shut(PlannedBatch batch, PlannedLoad load) {
    return brief.lines().stream()
        .filter(line -> line.id().equals(batch.lineId()))
        .findFirst()
        .flatMap(
            line ->
                shut(line.before(), load)
                    .or(() -> shut(line.machines(), batch))
                    .or(() -> shut(line.after(), load)))
        .map(name -> name + " does not work any more this week");
  }

  private Optional<String> shut(List<StationSpec> stations, PlannedLoad load) {
    for (PlannedVisit visit : load.visits()) {
      for (StationSpec station : stations) {
        if (station.id().equals(visit.stationId())
            && brief.isBeyond(visit.startMin())
            && !works(station.calendar(), visit.endMin() - visit.startMin())) {
          return Optional.of(station.name());
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> shut(List<MachineSpec> machines, PlannedBatch batch) {
    return machines.stream()
        .filter(machine -> machine.id().equals(batch.machineId()))
        .filter(machine -> brief.isBeyond(batch.startMin()))
        .filter(machine -> !works(machine.calendar(), batch.dwellMin()))
        .map(MachineSpec::name)
        .findFirst();
  }

  private boolean works(WorkCalendar calendar, int minutes) {
    return calendar.open().stream()
        .map(s -> new Span(Math.max(s.startMin(), atMin), Math.max(s.endMin(), atMin)))
        .anyMatch(s -> s.endMin() - s.startMin() >= minutes);
  }
}
