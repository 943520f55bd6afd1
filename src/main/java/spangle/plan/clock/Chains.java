package spangle.plan.clock;

import java.util.Arrays;

/**
 * Between what minutes the loads of one batch must start, for the legs before them. Scratch; not
 * for two threads.
 */
final class Chains {
  private final Floor floor;

  /** By load: earliest start; {@link Hours#NEVER} where a leg before has no time yet. */
  int[] from = new int[4];

  /** By load: latest start. */
  int[] to = new int[4];

  Chains(Floor floor) {
    this.floor = floor;
  }

  /** Reads them from the ends of all lots. */
  void read(Batch batch, int[] lotEnd) {
    int n = batch.loads.length;
    if (from.length < n) {
      from = new int[2 * n];
      to = new int[2 * n];
    }
    Arrays.fill(from, 0, n, 0);
    Arrays.fill(to, 0, n, Integer.MAX_VALUE);
    if (!batch.chained) {
      return;
    }
    for (int i = 0; i < n; i++) {
      Load load = batch.loads[i];
      if (load.chained && !read(load, i, lotEnd)) {
        return;
      }
    }
  }

  private boolean read(Load load, int i, int[] lotEnd) {
    for (int lot : load.lots) {
      LotFacts facts = floor.lots[lot];
      if (facts.after < 0) {
        continue;
      }
      int end = lotEnd[facts.after];
      if (end < 0) {
        from[i] = Hours.NEVER;
        return false;
      }
      from[i] = Math.max(from[i], end + facts.minGap);
      to[i] =
          Math.min(to[i], facts.maxGap == Integer.MAX_VALUE ? facts.maxGap : end + facts.maxGap);
    }
    return true;
  }

  /** Whether those read last are those of that passage. */
  boolean same(Passage passage) {
    int n = passage.batch.loads.length;
    return Arrays.equals(from, 0, n, passage.chainFrom, 0, n)
        && Arrays.equals(to, 0, n, passage.chainTo, 0, n);
  }

  /** Latest of the earliest starts; NEVER where a leg before has no time yet. */
  int ready(Batch batch) {
    int latest = 0;
    for (int i = 0; i < batch.loads.length; i++) {
      latest = Math.max(latest, from[i]);
    }
    return latest;
  }
}
