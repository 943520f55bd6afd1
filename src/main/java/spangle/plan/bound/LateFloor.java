package spangle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import spangle.equipment.Span;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.clock.KitCount;
import spangle.plan.clock.Tally;

/**
 * Late lots that no order can save. First those that are late even on an empty line; then, for any
 * stretch of time, the lots that can neither reach their machine before it nor be late after it:
 * what they take of all machines together, share of places times minutes, must fit into the open
 * minutes of that stretch, or some of them are late.
 */
final class LateFloor {
  private static final int MOST_FROM = 24;
  private static final int MOST_TO = 120;
  private static final double ROUNDING = 1e-6;

  private final Brief brief;
  private final Set<String> lotIds;
  private final EarliestEnds ends;

  LateFloor(Brief brief, Set<String> lotIds, EarliestEnds ends) {
    this.brief = brief;
    this.lotIds = lotIds;
    this.ends = ends;
  }

  /** Weighted minutes late of all lots that are late on an empty line. */
  long minutes() {
    long sum = 0;
    for (Lot lot : brief.lots()) {
      if (lotIds.contains(lot.id()) && lot.lastLeg()) {
        int end = ends.of(lot);
        if (end != EarliestEnds.NEVER) {
          sum += (long) lot.weight() * Math.max(0, end - lot.dueMin());
        }
      }
    }
    return sum;
  }

  /** What the kits come to where every lot ends as early as it can on an empty line. */
  KitFloor kits() {
    int[] earliest =
        brief.lots().stream()
            .mapToInt(lot -> lotIds.contains(lot.id()) && lot.lastLeg() ? end(lot) : -1)
            .toArray();
    long[] tally = new long[Tally.SIZE];
    new KitCount(brief).count(earliest, tally);
    return new KitFloor(tally[Tally.LATE_KITS], tally[Tally.SET_MIN]);
  }

  private int end(Lot lot) {
    int end = ends.of(lot);
    return end == EarliestEnds.NEVER ? 0 : end;
  }

  /** Weighted kits late, and weighted minutes until their sets are whole, at least. */
  record KitFloor(long late, long setMinutes) {}

  private record Need(int fromMin, int toMin, int weight, double minutes) {
    double perWeight() {
      return minutes / Math.max(1, weight);
    }
  }

  /** Weighted late lots of one line. */
  static long lots(LineWork work, EarliestEnds ends) {
    long late = 0;
    for (Lot lot : work.started) {
      late += lot.lastLeg() && ends.of(lot) > lot.dueMin() ? lot.weight() : 0;
    }
    List<OpenLot> open = new ArrayList<>();
    for (OpenLot each : work.open) {
      Lot lot = each.lot;
      if (!lot.lastLeg()) {
        continue;
      }
      int end = ends.of(lot);
      if (end != EarliestEnds.NEVER && end > lot.dueMin()) {
        late += lot.weight();
      } else if (lot.weight() > 0) {
        open.add(each);
      }
    }
    long most = 0;
    for (int k = 0; k < OpenLot.RESOURCES; k++) {
      int resource = k;
      List<Need> needs = open.stream().map(each -> need(each, resource, work, ends)).toList();
      most = Math.max(most, crowded(work, needs));
    }
    return late + most;
  }

  private static Need need(OpenLot each, int resource, LineWork work, EarliestEnds ends) {
    return new Need(
        ends.atMachine(each.lot, work.line),
        each.lot.dueMin() - EarliestEnds.minutesBehind(each.lot, work.line),
        each.lot.weight(),
        each.placesShare[resource] * each.dwell);
  }

  /** The largest weight that any one stretch of time makes late. */
  private static long crowded(LineWork work, List<Need> needs) {
    List<Need> heavyFirst = new ArrayList<>(needs);
    heavyFirst.sort(Comparator.comparingDouble((Need need) -> -need.perWeight()));
    TreeSet<Integer> froms = new TreeSet<>();
    TreeSet<Integer> tos = new TreeSet<>();
    needs.forEach(need -> froms.add(need.fromMin()));
    needs.forEach(need -> tos.add(need.toMin()));
    long most = 0;
    for (int from : spread(froms, MOST_FROM)) {
      for (int to : spread(tos, MOST_TO)) {
        if (to > from) {
          most = Math.max(most, late(work, heavyFirst, from, to));
        }
      }
    }
    return most;
  }

  private static long late(LineWork work, List<Need> heavyFirst, int from, int to) {
    double excess = -openMinutes(work, from, to);
    for (Need need : heavyFirst) {
      excess += need.fromMin() >= from && need.toMin() <= to ? need.minutes() : 0;
    }
    double weight = 0;
    for (Need need : heavyFirst) {
      if (excess <= ROUNDING) {
        break;
      }
      if (need.fromMin() >= from && need.toMin() <= to && need.minutes() > 0) {
        weight += need.weight() * Math.min(1, excess / need.minutes());
        excess -= need.minutes();
      }
    }
    return (long) Math.ceil(weight - ROUNDING);
  }

  private static double openMinutes(LineWork work, int from, int to) {
    double sum = 0;
    for (MachineSpec machine : work.line.machines()) {
      for (Span span : machine.calendar().open()) {
        sum += Math.max(0, Math.min(to, span.endMin()) - Math.max(from, span.startMin()));
      }
    }
    return sum;
  }

  private static List<Integer> spread(SortedSet<Integer> values, int most) {
    List<Integer> all = new ArrayList<>(values);
    List<Integer> some = new ArrayList<>();
    int step = Math.max(1, (all.size() + most - 1) / most);
    for (int i = 0; i < all.size(); i += step) {
      some.add(all.get(i));
    }
    return some;
  }
}
