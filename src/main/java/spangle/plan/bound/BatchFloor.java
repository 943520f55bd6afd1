package spangle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Fewest batches for lots of one kind of work on one line, and fewest minutes.
 *
 * <p>Minutes: for any dwell t, the batches that last at least t are no fewer than those the lots
 * that need at least t take by themselves; summed over all t this is a floor for the minutes.
 */
final class BatchFloor {
  final int byCapacity;
  final int byConflict;
  final int batches;
  final long minutes;

  BatchFloor(List<OpenLot> lots) {
    int capacity = 0;
    int conflict = 0;
    int all = 0;
    long sum = 0;
    for (List<OpenLot> part : LineWork.apart(lots, Company::kindsMeet)) {
      Part each = new Part(part);
      capacity += each.capacity(part, true);
      conflict += each.conflict(0);
      int fewest = each.fewest(part, 0, true);
      all += fewest;
      sum += each.minutes(fewest);
    }
    this.byCapacity = capacity;
    this.byConflict = conflict;
    this.batches = all;
    this.minutes = sum;
  }

  /** Lots of which each may meet at least one other. */
  private static final class Part {
    private final List<OpenLot> longFirst;
    private final List<OpenLot> longStrangers;
    private final List<OpenLot> largeStrangers;

    Part(List<OpenLot> lots) {
      longFirst = new ArrayList<>(lots);
      longFirst.sort(
          Comparator.comparingInt((OpenLot lot) -> -lot.dwell).thenComparing(lot -> lot.lot.id()));
      List<OpenLot> largeFirst = new ArrayList<>(lots);
      largeFirst.sort(
          Comparator.comparingDouble((OpenLot lot) -> -lot.largestShare())
              .thenComparing(lot -> lot.lot.id()));
      longStrangers = LineWork.strangers(longFirst, Company::mayShareMachine);
      largeStrangers = LineWork.strangers(largeFirst, Company::mayShareMachine);
    }

    int conflict(int leastDwell) {
      return (int)
          Math.max(
              longStrangers.stream().filter(lot -> lot.dwell >= leastDwell).count(),
              largeStrangers.stream().filter(lot -> lot.dwell >= leastDwell).count());
    }

    /** By places, of lots and of the loads they must at least make, and by mass. */
    int capacity(List<OpenLot> lots, boolean thoroughly) {
      int fewest = byLoads(lots, thoroughly);
      for (int k = 0; k < OpenLot.RESOURCES; k++) {
        int resource = k;
        fewest = Math.max(fewest, LoadFloor.fewest(lots, lot -> lot.placesShare[resource]));
        fewest = Math.max(fewest, LoadFloor.fewest(lots, lot -> lot.machineMassShare[resource]));
      }
      return fewest;
    }

    private static int byLoads(List<OpenLot> lots, boolean thoroughly) {
      List<Double> shares = new ArrayList<>();
      for (List<OpenLot> group : LineWork.by(lots, lot -> lot.lot.finish().key()).values()) {
        List<OpenLot> company = new ArrayList<>();
        double least = 1;
        for (OpenLot lot : group) {
          if (lot.lot.alone()) {
            shares.add(lot.loadPlacesShare);
          } else {
            company.add(lot);
            least = Math.min(least, lot.loadPlacesShare);
          }
        }
        if (!company.isEmpty()) {
          int loads = thoroughly ? LoadFloor.of("", company).loads() : LoadFloor.quick(company);
          for (int i = 0; i < loads; i++) {
            shares.add(least);
          }
        }
      }
      double[] all = shares.stream().mapToDouble(Double::doubleValue).toArray();
      return Shares.fewest(all, all.length);
    }

    int fewest(List<OpenLot> lots, int leastDwell, boolean thoroughly) {
      return Math.max(capacity(lots, thoroughly), conflict(leastDwell));
    }

    long minutes(int batchesInAll) {
      long sum = 0;
      int fewest = 0;
      List<OpenLot> longer = new ArrayList<>();
      for (int i = 0; i < longFirst.size(); i++) {
        longer.add(longFirst.get(i));
        int dwell = longFirst.get(i).dwell;
        int next = i + 1 < longFirst.size() ? longFirst.get(i + 1).dwell : 0;
        if (next == dwell) {
          continue;
        }
        boolean last = i + 1 == longFirst.size();
        fewest = Math.max(fewest, last ? batchesInAll : fewest(longer, dwell, false));
        sum += (long) fewest * (dwell - next);
      }
      return sum;
    }
  }
}
