package spangle.plan.bound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.LineKind;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.SetupTable;
import spangle.plan.StationSpec;

/** Puts the floors of one line together. */
final class LineFloor {
  private LineFloor() {}

  static LineBounds of(LineWork work, EarliestEnds ends) {
    List<LineBounds.GroupBounds> groups = new ArrayList<>();
    LineWork.by(work.open, lot -> lot.lot.finish().key())
        .forEach((key, lots) -> groups.add(LoadFloor.of(key, lots)));
    List<LineBounds.KindBounds> kinds = new ArrayList<>();
    LineWork.by(work.open, lot -> lot.lot.batchGroup())
        .forEach((key, lots) -> kinds.add(kind(key, new BatchFloor(lots))));
    long[] setting = settings(work);
    long[] colour = colours(work);
    return new LineBounds(
        work.line.id(),
        work.line.kind() == LineKind.ZINC,
        work.frozenLoads() + groups.stream().mapToInt(LineBounds.GroupBounds::loads).sum(),
        work.frozen.size() + kinds.stream().mapToInt(LineBounds.KindBounds::batches).sum(),
        work.line.kind() == LineKind.OUTSIDE
            ? 0
            : work.frozenMinutes() + kinds.stream().mapToLong(LineBounds.KindBounds::minutes).sum(),
        setting[0],
        setting[1],
        (int) colour[0],
        colour[1],
        LateFloor.lots(work, ends),
        kinds,
        groups);
  }

  private static LineBounds.KindBounds kind(String group, BatchFloor floor) {
    return new LineBounds.KindBounds(
        group, floor.byCapacity, floor.byConflict, floor.batches, floor.minutes);
  }

  /** Minutes and cost of setting changes, from the lots that leave no choice of setting. */
  private static long[] settings(LineWork work) {
    Map<Integer, List<OpenLot>> forced = new LinkedHashMap<>();
    Set<Integer> possible = new HashSet<>();
    for (OpenLot lot : work.open) {
      List<Integer> settings = lot.settings();
      possible.addAll(settings);
      if (settings.size() == 1) {
        forced.computeIfAbsent(settings.get(0), s -> new ArrayList<>()).add(lot);
      }
    }
    Set<Integer> starts = new HashSet<>();
    work.line.machines().stream().map(MachineSpec::initialSetting).forEach(starts::add);
    work.frozen.stream().map(PlannedBatch::setting).forEach(starts::add);
    Map<Integer, Integer> entries = new HashMap<>();
    forced.forEach((setting, lots) -> entries.put(setting, batches(lots)));
    SetupTable table = work.line.settingChange();
    if (table.states().isEmpty()) {
      return new long[2];
    }
    return new long[] {
      SetupFloor.of(entries, starts, possible, table::minutes),
      SetupFloor.of(entries, starts, possible, table::cost)
    };
  }

  private static int batches(List<OpenLot> lots) {
    return LineWork.by(lots, lot -> lot.lot.batchGroup()).values().stream()
        .mapToInt(group -> new BatchFloor(group).batches)
        .sum();
  }

  /** Number and cost of changes at all stations that have them. */
  private static long[] colours(LineWork work) {
    long changes = 0;
    long cost = 0;
    List<StationSpec> stations = new ArrayList<>(work.line.before());
    stations.addAll(work.line.after());
    for (StationSpec station : stations) {
      if (station.setups().states().size() < 2) {
        continue;
      }
      Set<Integer> starts = new HashSet<>();
      starts.add(station.initialState());
      work.started.stream()
          .filter(lot -> OpenLot.minutesAt(lot, station.id()) > 0)
          .map(lot -> lot.finish().index())
          .forEach(starts::add);
      Map<Integer, Integer> entries = entries(work, station.id());
      SetupTable table = station.setups();
      changes +=
          SetupFloor.of(
              entries,
              starts,
              Set.of(),
              (from, to) -> table.cost(from, to) > 0 || table.minutes(from, to) > 0 ? 1 : 0);
      cost += SetupFloor.of(entries, starts, Set.of(), table::cost);
    }
    return new long[] {changes, cost};
  }

  /** Fewest loads of each colour that stop there. */
  private static Map<Integer, Integer> entries(LineWork work, String stationId) {
    Map<Integer, Integer> entries = new LinkedHashMap<>();
    List<OpenLot> stopping = work.open.stream().filter(lot -> lot.visits(stationId)).toList();
    LineWork.by(stopping, lot -> lot.lot.finish().index() + " " + lot.lot.finish().key())
        .forEach(
            (key, lots) -> {
              Lot first = lots.get(0).lot;
              entries.merge(first.finish().index(), LoadFloor.of(key, lots).loads(), Integer::sum);
            });
    return entries;
  }
}
