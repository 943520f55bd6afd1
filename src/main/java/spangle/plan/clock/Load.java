package spangle.plan.clock;

import java.util.Optional;
import java.util.stream.IntStream;
import spangle.plan.PlannedLoad;

/** One filled carrier: lots of one finish, with what they come to together. Never changes. */
public final class Load {
  /** The carrier, a place in {@link Floor#carriers}. */
  public final int carrier;

  /** Its lots, places in {@link Floor#lots}, ascending. */
  public final int[] lots;

  /** Finish of all its lots. */
  public final int finish;

  /** State it wants of a booth. */
  public final int finishIndex;

  /** Batch group of all its lots. */
  public final int group;

  /** Places it takes in the machine. */
  public final int units;

  /** Mass of the parts, kilograms. */
  public final double massKg;

  /** Mass with the carrier, kilograms. */
  public final double grossKg;

  /** Latest ready time of its lots. */
  public final int ready;

  /** Machines that take all of its lots. */
  public final long machines;

  /** Shortest dwell by setting; -1 where they cannot run together. */
  public final int[] dwellMin;

  /** Longest dwell by setting. */
  public final int[] dwellMax;

  /** Earliest due time of its last legs; {@link Integer#MAX_VALUE} where it has none. */
  public final int due;

  /** Weight of all its lots. */
  public final int weight;

  /** Whether one of its lots travels alone. */
  public final boolean alone;

  /** Whether one of its lots comes after another leg. */
  public final boolean chained;

  /** Minutes at each station of the line; empty where the line has none. */
  final int[] minutes;

  /** Minutes at all stations ahead of the machine. */
  final int travel;

  /** What it draws on, or -1, and how much. */
  final int supply;

  final double supplyKg;

  /** Due times of last legs ascending with their weights. */
  final int[] dues;

  final int[] dueWeights;

  /** Latest due time of last legs and the weight of them all. */
  final int lastDue;

  final int dueWeight;

  /** Sum of due time times weight of last legs. */
  final long dueProduct;

  /** Where the announced plan has it. */
  final Announced.Word announced;

  /** As it stands in the brief's frozen part. */
  final Optional<PlannedLoad> frozen;

  Load(LoadSum sum) {
    this.carrier = sum.carrier.index;
    this.lots = sum.lots;
    this.finish = sum.finish;
    this.finishIndex = sum.finishIndex;
    this.group = sum.group;
    this.units = sum.carrier.spec.floorUnits();
    this.massKg = sum.massKg;
    this.grossKg = sum.massKg + sum.carrier.spec.ownMassKg();
    this.ready = sum.ready;
    this.machines = sum.machines;
    this.dwellMin = sum.dwellMin;
    this.dwellMax = sum.dwellMax;
    this.weight = sum.weight;
    this.alone = sum.alone;
    this.chained = sum.chained;
    this.minutes = sum.minutes;
    this.travel = sum.travel;
    this.supply = sum.supply;
    this.supplyKg = sum.supplyKg;
    this.dues = sum.dues;
    this.dueWeights = sum.dueWeights;
    this.due = dues.length == 0 ? Integer.MAX_VALUE : dues[0];
    this.lastDue = dues.length == 0 ? Integer.MIN_VALUE : dues[dues.length - 1];
    this.dueWeight = IntStream.of(dueWeights).sum();
    this.dueProduct =
        IntStream.range(0, dues.length).mapToLong(k -> (long) dues[k] * dueWeights[k]).sum();
    this.announced = sum.announced;
    this.frozen = sum.frozen;
  }

  /** Minutes at all stations ahead of the machine, waits not counted. */
  public int travel() {
    return travel;
  }

  /** Minutes at all stations behind the machine, waits not counted. */
  public int behind() {
    int sum = -travel;
    for (int each : minutes) {
      sum += each;
    }
    return sum;
  }

  /** Adds or takes away what the load is late when it is finished at that minute. */
  void countLate(int endMin, int sign, long[] tally) {
    if (endMin <= due) {
      return;
    }
    if (due == lastDue) {
      tally[Tally.LATE_LOTS] += (long) sign * dueWeight;
      tally[Tally.LATE_MIN] += (long) sign * dueWeight * (endMin - due);
      return;
    }
    for (int k = 0; k < dues.length && dues[k] < endMin; k++) {
      tally[Tally.LATE_LOTS] += (long) sign * dueWeights[k];
      tally[Tally.LATE_MIN] += (long) sign * dueWeights[k] * (endMin - dues[k]);
    }
  }

  /** Counts what changes when it is finished at another minute. */
  void countLater(int wasMin, int endMin, long[] tally) {
    if (Math.max(wasMin, endMin) <= due) {
      return;
    }
    if (Math.min(wasMin, endMin) > lastDue) {
      tally[Tally.LATE_MIN] += (long) dueWeight * (endMin - wasMin);
      return;
    }
    countLate(wasMin, -1, tally);
    countLate(endMin, 1, tally);
  }

  /** At how many times the announced plan has such a load; 0 where it says nothing of it. */
  public int announcedTimes() {
    return announced.times();
  }

  /** One of them, from 0 on. */
  public int announcedTime(int k) {
    return announced.time(k);
  }

  /** What it counts where it stands or hangs otherwise than announced. */
  int moved(int machine, int setting, int startMin, int firstMin) {
    return frozen.isPresent() ? 0 : announced.moved(machine, setting, startMin, carrier, firstMin);
  }
}
