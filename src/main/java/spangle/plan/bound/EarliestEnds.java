package spangle.plan.bound;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.Brief;
import spangle.plan.Chain;
import spangle.plan.Dwell;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.SetupTable;
import spangle.plan.StationSpec;
import spangle.plan.Supply;

/**
 * The earliest each lot could be finished if the whole shop waited for it alone: nothing else on
 * its line, the cheapest set-up before it, its material the moment enough of it is there. What has
 * started ends when it was released to end.
 */
final class EarliestEnds {
  /** No end can be said. */
  static final int NEVER = WorkCalendar.NEVER;

  private final Map<String, LineSpec> lines = new HashMap<>();
  private final Map<String, Lot> lots = new HashMap<>();
  private final Brief brief;
  private final Map<String, Integer> frozenEnds = new HashMap<>();
  private final Map<String, Integer> known = new HashMap<>();
  private final Set<String> asked = new HashSet<>();

  EarliestEnds(Brief brief, Set<String> lotIds) {
    this.brief = brief;
    brief.lines().forEach(line -> lines.put(line.id(), line));
    brief.lots().stream()
        .filter(lot -> lotIds.contains(lot.id()))
        .forEach(lot -> lots.put(lot.id(), lot));
    for (PlannedBatch batch : brief.frozen()) {
      for (PlannedLoad load : batch.loads()) {
        int end = batch.endMin();
        for (PlannedLoad.PlannedVisit visit : load.visits()) {
          end = Math.max(end, visit.endMin());
        }
        for (String lot : load.lotIds()) {
          frozenEnds.put(lot, end);
        }
      }
    }
  }

  boolean isFrozen(String lotId) {
    return frozenEnds.containsKey(lotId);
  }

  /** Earliest end of the lot's last visit. */
  int of(Lot lot) {
    Integer frozen = frozenEnds.get(lot.id());
    if (frozen != null) {
      return frozen;
    }
    Integer end = known.get(lot.id());
    if (end == null) {
      // Legs that go round in a circle say nothing about one another.
      end = asked.add(lot.id()) ? walk(lot) : 0;
      known.put(lot.id(), end);
    }
    return end;
  }

  private int walk(Lot lot) {
    LineSpec line = lines.get(lot.lineId());
    return line == null ? 0 : behind(lot, line, batchEnd(lot, line));
  }

  private int batchEnd(Lot lot, LineSpec line) {
    int there = atMachine(lot, line);
    int best = NEVER;
    for (MachineSpec machine : line.machines()) {
      if (!lot.machines().contains(machine.id())) {
        continue;
      }
      for (Dwell dwell : lot.dwells()) {
        int setup = leastSetup(line.settingChange(), dwell.setting());
        int start = place(machine.calendar(), there, setup, dwell.minMin());
        best = Math.min(best, start == NEVER ? NEVER : start + dwell.minMin());
      }
    }
    return best;
  }

  /** Earliest minute at which the lot can be in front of its machine. */
  int atMachine(Lot lot, LineSpec line) {
    int there = Math.max(lot.readyMin(), chainFrom(lot));
    for (StationSpec station : line.before()) {
      there = pass(lot, station, there);
    }
    return Math.max(there, material(lot));
  }

  private int behind(Lot lot, LineSpec line, int batchEnd) {
    int there = batchEnd;
    for (StationSpec station : line.after()) {
      there = pass(lot, station, there);
    }
    return there;
  }

  /** Minutes at stations behind the machine, no waits counted. */
  static int minutesBehind(Lot lot, LineSpec line) {
    return line.after().stream().mapToInt(s -> OpenLot.minutesAt(lot, s.id())).sum();
  }

  private static int pass(Lot lot, StationSpec station, int there) {
    int minutes = OpenLot.minutesAt(lot, station.id());
    if (minutes == 0 || there == NEVER) {
      return there;
    }
    int start = station.calendar().earliestStart(there, minutes);
    return start == NEVER ? NEVER : start + minutes;
  }

  private int chainFrom(Lot lot) {
    if (lot.after().isEmpty()) {
      return 0;
    }
    Chain chain = lot.after().get();
    Lot before = lots.get(chain.lotId());
    if (before == null) {
      return 0;
    }
    int end = of(before);
    return end == NEVER ? NEVER : end + chain.minGapMin();
  }

  private int material(Lot lot) {
    Supply supply = brief.supplyOf(lot.finish()).orElse(null);
    if (supply == null || lot.materialKg() <= 1e-6) {
      return 0;
    }
    List<Supply.Arrival> inOrder =
        supply.arrivals().stream().sorted(Comparator.comparingInt(Supply.Arrival::atMin)).toList();
    double there = 0;
    for (Supply.Arrival arrival : inOrder) {
      there += arrival.amount();
      if (there >= lot.materialKg() - 1e-6) {
        return Math.max(0, arrival.atMin());
      }
    }
    return 0;
  }

  private static int leastSetup(SetupTable table, int to) {
    int least = Integer.MAX_VALUE;
    for (int from = 0; from < table.states().size(); from++) {
      least = Math.min(least, table.minutes(from, to));
    }
    return least == Integer.MAX_VALUE ? 0 : least;
  }

  private static int place(WorkCalendar calendar, int from, int setup, int minutes) {
    if (from == NEVER) {
      return NEVER;
    }
    for (Span span : calendar.open()) {
      int start = Math.max(Math.max(from, setup), span.startMin() + setup);
      if ((long) start + minutes <= span.endMin()) {
        return start;
      }
    }
    return NEVER;
  }
}
