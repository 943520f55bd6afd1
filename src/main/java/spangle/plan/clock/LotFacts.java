package spangle.plan.clock;

import spangle.plan.Chain;
import spangle.plan.Lot;

/** A lot of the brief with every name turned into a place in an array. */
public final class LotFacts {
  /** Place in {@link Floor#lots}. */
  public final int index;

  /** The lot itself. */
  public final Lot lot;

  /** Place in {@link Floor#lines}. */
  public final int line;

  /** Its finish among those of its line; equal keys, equal numbers. */
  public final int finish;

  /** Its batch group among those of the week. */
  public final int group;

  /** Shortest dwell by setting; -1 where it cannot run. */
  public final int[] dwellMin;

  /** Longest dwell by setting. */
  public final int[] dwellMax;

  /** One bit per machine of its line it may go in. */
  public final long machines;

  /** Carriers it may hang on, best first. */
  public final int[] carriers;

  /** The leg before, or -1. */
  public final int after;

  /** Least and longest minutes after the leg before; 0 and {@link Integer#MAX_VALUE} without. */
  final int minGap;

  final int maxGap;

  /** Kits that wait for it. */
  public final int[] kits;

  /** What it draws on among the limited supplies, or -1. */
  public final int supply;

  final int[] fixedMin;
  final double[] variableMin;

  LotFacts(
      int index,
      Lot lot,
      int line,
      int finish,
      int group,
      int[][] dwells,
      long machines,
      int[] carriers,
      int after,
      int[] kits,
      int supply,
      int[] fixedMin,
      double[] variableMin) {
    this.index = index;
    this.lot = lot;
    this.line = line;
    this.finish = finish;
    this.group = group;
    this.dwellMin = dwells[0];
    this.dwellMax = dwells[1];
    this.machines = machines;
    this.carriers = carriers;
    this.after = after;
    this.minGap = lot.after().map(Chain::minGapMin).orElse(0);
    this.maxGap = lot.after().map(Chain::maxGapMin).orElse(Integer.MAX_VALUE);
    this.kits = kits;
    this.supply = supply;
    this.fixedMin = fixedMin;
    this.variableMin = variableMin;
  }

  /** Whether any machine at any setting and any carrier takes it. */
  public boolean hasPlace() {
    if (machines == 0 || carriers.length == 0) {
      return false;
    }
    for (int min : dwellMin) {
      if (min >= 0) {
        return true;
      }
    }
    return false;
  }

  /** Shortest dwell over all settings; 0 where it has none. */
  public int shortestDwell() {
    int best = Integer.MAX_VALUE;
    for (int min : dwellMin) {
      if (min >= 0) {
        best = Math.min(best, min);
      }
    }
    return best == Integer.MAX_VALUE ? 0 : best;
  }
}
