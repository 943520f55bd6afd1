package spangle.plan.clock;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import spangle.plan.BathSpec;

/**
 * The zinc of a kettle as the clock needs it: whole micrometres below the usual mark, what a dip
 * takes out rounded up, what a lot needs rounded down.
 */
final class BathFacts {
  private final int[] markAt;
  private final int[] markDown;
  private final int[] spare;
  private final int[] taken;

  BathFacts(BathSpec spec, LotFacts[] lots) {
    markAt = spec.marks().stream().mapToInt(BathSpec.Mark::atMin).toArray();
    markDown =
        spec.marks().stream().mapToInt(mark -> (int) Math.ceil(1000 * mark.downMm())).toArray();
    spare = new int[lots.length];
    taken = new int[lots.length];
    Arrays.fill(spare, Integer.MAX_VALUE);
    Map<String, Double> needs = new HashMap<>();
    spec.needs().forEach(need -> needs.put(need.lotId(), need.spareMm()));
    for (LotFacts lot : lots) {
      taken[lot.index] = (int) Math.ceil(1000 * spec.mmPerKg() * lot.lot.materialKg());
      Double own = needs.get(lot.lot.id());
      if (own != null) {
        spare[lot.index] = (int) Math.floor(1000 * own + 1e-6);
      }
    }
  }

  /** Level at a minute, from what it was behind the dip before. */
  int down(int downThen, int thenMin, int atMin) {
    int down = downThen;
    for (int k = 0; k < markAt.length && markAt[k] <= atMin; k++) {
      if (markAt[k] > thenMin) {
        down = markDown[k];
      }
    }
    return down;
  }

  /** What the batch takes out. */
  int taken(Batch batch) {
    int sum = 0;
    for (Load load : batch.loads) {
      for (int lot : load.lots) {
        sum += taken[lot];
      }
    }
    return sum;
  }

  /**
   * The same minute when the batch is covered then; else the next mark at which the zinc stands
   * high enough; {@link Hours#NEVER} where there is none.
   */
  int covered(Batch batch, int downThen, int thenMin, int atMin) {
    int most = Integer.MAX_VALUE;
    for (Load load : batch.loads) {
      for (int lot : load.lots) {
        most = Math.min(most, spare[lot]);
      }
    }
    if (most == Integer.MAX_VALUE || down(downThen, thenMin, atMin) <= most) {
      return atMin;
    }
    for (int k = 0; k < markAt.length; k++) {
      if (markAt[k] > atMin && markDown[k] <= most) {
        return markAt[k];
      }
    }
    return Hours.NEVER;
  }
}
