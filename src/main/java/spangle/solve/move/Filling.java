package spangle.solve.move;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Load;
import spangle.plan.clock.MachineFacts;

/** A batch while it fills, load by load. Scratch; not for two threads. */
final class Filling {
  private int places;
  private double mostKg;
  private int machine;
  private int setting;
  private Load[] loads = new Load[64];
  private int count;
  private int units;
  private double grossKg;
  private int shortest;
  private int longest;

  /** Begins anew, for so many loads at most. */
  void begin(MachineFacts on, int atSetting, int most) {
    places = on.spec.capacityUnits();
    mostKg = on.spec.maxMassKg();
    machine = on.index;
    setting = atSetting;
    if (loads.length < most) {
      loads = new Load[2 * most];
    }
    count = 0;
    units = 0;
    grossKg = 0;
    shortest = 0;
    longest = Integer.MAX_VALUE;
  }

  /** Takes the load if there is room for it and its window meets those of the others. */
  boolean take(Load load) {
    int min = load.dwellMin[setting];
    if (min < 0
        || units + load.units > places
        || (load.machines >>> machine & 1) == 0
        || Math.max(shortest, min) > Math.min(longest, load.dwellMax[setting])
        || grossKg + load.grossKg > mostKg) {
      return false;
    }
    units += load.units;
    grossKg += load.grossKg;
    shortest = Math.max(shortest, min);
    longest = Math.min(longest, load.dwellMax[setting]);
    loads[count++] = load;
    return true;
  }

  /** The batch; null where nothing went in. */
  @Nullable Batch made() {
    return count == 0 ? null : Batch.of(setting, Arrays.copyOf(loads, count));
  }
}
