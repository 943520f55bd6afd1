package spangle.plan.clock;

import java.util.Optional;
import spangle.plan.PlannedBatch;

/**
 * Loads that share a machine at one setting, with what they come to together. Never changes; a
 * change makes another batch.
 */
public final class Batch {
  /** Its loads in the order they are fed to the line. */
  public final Load[] loads;

  /** Setting of the machine. */
  public final int setting;

  /** Group of all its loads. */
  public final int group;

  /** Minutes in the machine; -1 where its loads cannot run together. */
  public final int dwell;

  /** Most minutes its loads bear together. */
  public final int dwellMax;

  /** Places taken in the machine. */
  public final int units;

  /** Mass of the parts, kilograms. */
  public final double massKg;

  /** Mass with carriers, kilograms. */
  public final double grossKg;

  /** Latest ready time of its loads. */
  public final int ready;

  /** Earliest due time of its last legs; {@link Integer#MAX_VALUE} where it has none. */
  public final int due;

  /** Machines that take all its loads. */
  public final long machines;

  /** Weight of all its lots. */
  public final int weight;

  /** As it stands in the brief's frozen part. */
  public final Optional<PlannedBatch> frozen;

  final boolean isFrozen;

  /** It hangs and has no time in the week: nothing but its carrier is in use. */
  final boolean waits;

  final boolean chained;
  final int travel;

  /** Latest due time of its last legs, and the weight of all of them. */
  private final int lastDue;

  private final int dueWeight;

  /** Sum of due time times weight. */
  private final long dueSum;

  private Batch(Load[] loads, int setting, Optional<PlannedBatch> frozen, boolean waits) {
    this.waits = waits;
    this.loads = loads;
    this.setting = setting;
    this.frozen = frozen;
    this.isFrozen = frozen.isPresent();
    this.group = loads[0].group;
    int shortest = 0;
    int longest = Integer.MAX_VALUE;
    int unitSum = 0;
    double mass = 0;
    double gross = 0;
    int readyMin = 0;
    int dueMin = Integer.MAX_VALUE;
    int latestDue = Integer.MIN_VALUE;
    int dueWeights = 0;
    long dueProducts = 0;
    long takes = -1L;
    int weightSum = 0;
    boolean sound = true;
    boolean anyChained = false;
    int longestTravel = 0;
    for (Load load : loads) {
      int min = load.dwellMin[setting];
      sound &= min >= 0 && load.group == group;
      shortest = Math.max(shortest, min);
      longest = Math.min(longest, load.dwellMax[setting]);
      unitSum += load.units;
      mass += load.massKg;
      gross += load.grossKg;
      readyMin = Math.max(readyMin, load.ready);
      dueMin = Math.min(dueMin, load.due);
      latestDue = Math.max(latestDue, load.lastDue);
      dueWeights += load.dueWeight;
      dueProducts += load.dueProduct;
      takes &= load.machines;
      weightSum += load.weight;
      anyChained |= load.chained;
      longestTravel = Math.max(longestTravel, load.travel);
    }
    if (frozen.isPresent()) {
      this.dwell = frozen.get().dwellMin();
    } else {
      this.dwell = sound && shortest <= longest ? shortest : -1;
    }
    this.dwellMax = longest;
    this.units = unitSum;
    this.massKg = mass;
    this.grossKg = gross;
    this.ready = readyMin;
    this.due = dueMin;
    this.lastDue = latestDue;
    this.dueWeight = dueWeights;
    this.dueSum = dueProducts;
    this.machines = takes;
    this.weight = weightSum;
    this.chained = anyChained;
    this.travel = longestTravel;
  }

  /** A batch that runs, with one load more; what it comes to is not summed again. */
  private Batch(Batch base, Load more, Load[] loads) {
    this.loads = loads;
    this.setting = base.setting;
    this.frozen = Optional.empty();
    this.waits = false;
    this.isFrozen = false;
    this.group = base.group;
    int min = more.dwellMin[setting];
    int shortest = Math.max(base.dwell, min);
    this.dwellMax = Math.min(base.dwellMax, more.dwellMax[setting]);
    boolean sound = min >= 0 && more.group == group && shortest <= dwellMax;
    this.dwell = sound ? shortest : -1;
    this.units = base.units + more.units;
    this.massKg = base.massKg + more.massKg;
    this.grossKg = base.grossKg + more.grossKg;
    this.ready = Math.max(base.ready, more.ready);
    this.due = Math.min(base.due, more.due);
    this.lastDue = Math.max(base.lastDue, more.lastDue);
    this.dueWeight = base.dueWeight + more.dueWeight;
    this.dueSum = base.dueSum + more.dueProduct;
    this.machines = base.machines & more.machines;
    this.weight = base.weight + more.weight;
    this.chained = base.chained || more.chained;
    this.travel = Math.max(base.travel, more.travel);
  }

  /** A batch of these loads; the array is not copied and must not change afterwards. */
  public static Batch of(int setting, Load... loads) {
    return new Batch(loads, setting, Optional.empty(), false);
  }

  static Batch frozen(PlannedBatch planned, boolean waits, Load... loads) {
    return new Batch(loads, planned.setting(), Optional.of(planned), waits);
  }

  /** This batch with one more load, fed last. */
  public Batch with(Load load) {
    Load[] more = new Load[loads.length + 1];
    System.arraycopy(loads, 0, more, 0, loads.length);
    more[loads.length] = load;
    return grown(load, more);
  }

  /** This batch with one more load, fed at that place. */
  public Batch with(int place, Load load) {
    Load[] more = new Load[loads.length + 1];
    System.arraycopy(loads, 0, more, 0, place);
    more[place] = load;
    System.arraycopy(loads, place, more, place + 1, loads.length - place);
    return grown(load, more);
  }

  private Batch grown(Load load, Load[] more) {
    return isFrozen || dwell < 0 ? of(setting, more) : new Batch(this, load, more);
  }

  /** This batch without the load at that place; it must have another. */
  public Batch without(int place) {
    Load[] fewer = new Load[loads.length - 1];
    System.arraycopy(loads, 0, fewer, 0, place);
    System.arraycopy(loads, place + 1, fewer, place, fewer.length - place);
    return of(setting, fewer);
  }

  /** This batch with another load in that place. */
  public Batch replacing(int place, Load load) {
    Load[] other = loads.clone();
    other[place] = load;
    return of(setting, other);
  }

  /** This batch at another setting. */
  public Batch at(int otherSetting) {
    return of(otherSetting, loads);
  }

  /** The place of that very load among its loads, or -1. */
  public int placeOf(Load load) {
    for (int k = 0; k < loads.length; k++) {
      if (loads[k] == load) {
        return k;
      }
    }
    return -1;
  }

  /** Whether that load may join on that machine. */
  public boolean takes(Load load, MachineFacts machine) {
    int min = load.dwellMin[setting];
    return units + load.units <= machine.spec.capacityUnits()
        && min >= 0
        && load.group == group
        && (load.machines >>> machine.index & 1) != 0
        && Math.max(dwell, min) <= Math.min(dwellMax, load.dwellMax[setting])
        && grossKg + load.grossKg <= machine.spec.maxMassKg();
  }

  /** Whether it may run on that machine. */
  public boolean mayRunOn(MachineFacts machine) {
    return dwell >= 0
        && (machines >>> machine.index & 1) != 0
        && units <= machine.spec.capacityUnits()
        && grossKg <= machine.spec.maxMassKg();
  }

  void countLate(int endMin, int sign, long[] tally) {
    if (endMin <= due) {
      return;
    }
    if (endMin > lastDue) {
      tally[Tally.LATE_LOTS] += (long) sign * dueWeight;
      tally[Tally.LATE_MIN] += sign * (dueWeight * (long) endMin - dueSum);
      return;
    }
    for (Load load : loads) {
      load.countLate(endMin, sign, tally);
    }
  }

  /** Counts what changes when it ends at another minute. */
  void countLater(int wasMin, int endMin, long[] tally) {
    if (Math.max(wasMin, endMin) <= due) {
      return;
    }
    if (Math.min(wasMin, endMin) > lastDue) {
      tally[Tally.LATE_MIN] += (long) dueWeight * (endMin - wasMin);
      return;
    }
    for (Load load : loads) {
      load.countLater(wasMin, endMin, tally);
    }
  }

  /** What it counts wherever it stands, and which rules it breaks on that machine. */
  void countRun(MachineFacts machine, int sign, long[] tally) {
    tally[machine.away ? Tally.TRIPS : Tally.RUN] += machine.away ? sign : (long) sign * dwell;
    tally[Tally.LOADS] += (long) sign * loads.length;
    tally[Tally.BATCHES] += sign;
    if (!isFrozen) {
      countBroken(machine, sign, tally);
    }
  }

  private void countBroken(MachineFacts machine, int sign, long[] tally) {
    if ((machines >>> machine.index & 1) == 0) {
      tally[Tally.WRONG_MACHINE] += sign;
    }
    int over = units - machine.spec.capacityUnits();
    if (over > 0) {
      tally[Tally.OVER_PLACES] += (long) sign * over;
    }
    double overKg = grossKg - machine.spec.maxMassKg();
    if (overKg > 0) {
      tally[Tally.OVER_MASS] += (long) sign * (long) Math.ceil(overKg);
    }
  }

  void countMoved(int machine, int startMin, int sign, long[] tally) {
    for (Load load : loads) {
      tally[Tally.MOVED] += (long) sign * load.moved(machine, setting, startMin, startMin);
    }
  }
}
