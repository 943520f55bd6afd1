package spangle.plan.clock;

import spangle.plan.Kit;

/** A kit and the last legs it waits for. */
final class KitFacts {
  final Kit kit;
  final int[] lots;

  KitFacts(Kit kit, int[] lots) {
    this.kit = kit;
    this.lots = lots;
  }

  /** Adds what the kit comes to, from the end of every lot (-1 where it is not planned). */
  void count(int[] lotEnd, long[] tally) {
    int first = Integer.MAX_VALUE;
    int last = -1;
    for (int lot : lots) {
      int end = lotEnd[lot];
      if (end >= 0) {
        first = Math.min(first, end);
        last = Math.max(last, end);
      }
    }
    if (last < 0) {
      return;
    }
    tally[Tally.KIT_MIN] += last - first;
    if (last > kit.dueMin()) {
      tally[Tally.LATE_KITS] += kit.weight();
    }
  }
}
