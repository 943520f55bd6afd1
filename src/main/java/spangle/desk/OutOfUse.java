package spangle.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import spangle.intake.week.Maintenance;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.Visit;

/** Stations, ovens and kettles that stand still now with all their places, and whom they hold. */
final class OutOfUse {
  private final Brief brief;
  private final int atMin;

  /** The stop that lasts longest, by station. */
  private final Map<String, Maintenance> stops = new TreeMap<>();

  /**
   * What stands still at a minute.
   *
   * @param shop the shop with what events made of it
   * @param brief the same week
   */
  OutOfUse(Shop shop, Brief brief, int atMin) {
    this.brief = brief;
    this.atMin = atMin;
    for (ShopLine line : shop.lines()) {
      for (StationUse use : line.stations()) {
        shop.maintenance().stream()
            .filter(m -> m.stationId().equals(use.id()) && !m.leavesSome(use.count()))
            .filter(m -> m.span().startMin() <= atMin && m.span().endMin() > atMin)
            .forEach(m -> stops.merge(use.id(), m, OutOfUse::longer));
      }
    }
  }

  private static Maintenance longer(Maintenance a, Maintenance b) {
    return a.span().endMin() >= b.span().endMin() ? a : b;
  }

  /** What shuts every way of a lot until the plan ends, in words; empty where nothing does. */
  Optional<String> holds(Lot lot) {
    Optional<String> station =
        lot.visits().stream()
            .map(Visit::stationId)
            .filter(id -> shutUntil(id) >= brief.horizonMin())
            .findFirst()
            .map(this::words);
    return station.or(
        () ->
            machinesFrom(lot) >= brief.horizonMin()
                ? Optional.of(
                    String.join(" and ", lot.machines().stream().map(this::words).toList()))
                : Optional.empty());
  }

  /** Machines it might go in beside others, which stand still until the plan ends, in words. */
  Optional<String> narrows(Lot lot) {
    List<String> shut =
        lot.machines().stream()
            .filter(id -> shutUntil(id) >= brief.horizonMin())
            .map(this::words)
            .toList();
    return shut.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", shut));
  }

  /** From when on the last of what it cannot do without works again; empty where all works. */
  OptionalInt from(Lot lot) {
    int from = machinesFrom(lot);
    for (Visit visit : lot.visits()) {
      from = Math.max(from, shutUntil(visit.stationId()));
    }
    return from > 0 ? OptionalInt.of(from) : OptionalInt.empty();
  }

  /** What it cannot do without and works again at that minute, by name. */
  String works(Lot lot, int fromMin) {
    Set<String> ids = new LinkedHashSet<>();
    lot.visits().forEach(v -> ids.add(v.stationId()));
    ids.addAll(lot.machines());
    List<String> said = new ArrayList<>();
    ids.stream().filter(id -> shutUntil(id) == fromMin).map(brief::placeName).forEach(said::add);
    return String.join(" and ", said);
  }

  /** What a load still has to pass and stands still, in words behind "it waits"; else nothing. */
  String before(PlannedBatch batch, PlannedLoad load) {
    Stream<String> ahead =
        load.visits().stream()
            .filter(v -> v.endMin() > atMin)
            .map(PlannedLoad.PlannedVisit::stationId);
    Stream<String> machine = batch.endMin() > atMin ? Stream.of(batch.machineId()) : Stream.empty();
    return Stream.concat(ahead, machine)
        .filter(stops::containsKey)
        .findFirst()
        .map(id -> " for " + words(id))
        .orElse("");
  }

  private int machinesFrom(Lot lot) {
    return lot.machines().stream().mapToInt(this::shutUntil).min().orElse(0);
  }

  private int shutUntil(String id) {
    Maintenance stop = stops.get(id);
    return stop == null ? 0 : stop.span().endMin();
  }

  private String words(String id) {
    Maintenance stop = stops.get(id);
    if (stop == null) {
      return brief.placeName(id);
    }
    String why = stop.why().isEmpty() ? "out of use" : stop.why();
    String end =
        stop.span().endMin() == Maintenance.NO_END
            ? "no end known"
            : "until " + DayWords.of(stop.span().endMin());
    return brief.placeName(id)
        + " ("
        + why
        + (why.contains(":") ? ", since " : " since ")
        + DayWords.of(stop.span().startMin())
        + ", "
        + end
        + ")";
  }
}
