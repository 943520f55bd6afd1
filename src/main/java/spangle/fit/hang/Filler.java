package spangle.fit.hang;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Fills one carrier from what waits, as full as it can, by a fixed rule or by chance. Holds its own
 * working arrays: one filler per thread.
 */
abstract class Filler {
  final Grid grid;
  final Kind[] kinds;

  /** Pieces of each kind still to hang during a fill. */
  final int[] left;

  /** Kinds in the order in which they are hung. */
  final int[] order;

  private final double[] keys;
  private final boolean limited;
  private double massLeftKg;
  private long hooksLeft;

  Filler(Grid grid, Kind[] kinds) {
    this.grid = grid;
    this.kinds = kinds;
    this.left = new int[kinds.length];
    this.order = new int[kinds.length];
    this.keys = new double[kinds.length];
    this.limited =
        !Double.isInfinite(grid.face.maxMassKg()) || grid.face.maxHooks() != Integer.MAX_VALUE;
  }

  /** The filler for the style of the carrier. */
  static Filler of(Grid grid, Kind[] kinds) {
    return grid.rows ? new RowFiller(grid, kinds) : new FreeFiller(grid, kinds);
  }

  /** How many fixed rules there are. */
  abstract int rules();

  /** Fills the carrier from the pool, which stays as it is. */
  final void fill(int[] pool, int rule, Layout out) {
    begin(pool, out);
    byRule(rule, out);
  }

  /** Fills the carrier from the pool, which stays as it is. */
  final void fillAtRandom(int[] pool, SplittableRandom random, Layout out) {
    begin(pool, out);
    atRandom(random, out);
  }

  private void begin(int[] pool, Layout out) {
    System.arraycopy(pool, 0, left, 0, pool.length);
    massLeftKg = grid.face.maxMassKg() * (1 + 1e-9);
    hooksLeft = grid.face.maxHooks();
    out.clear();
  }

  abstract void byRule(int rule, Layout out);

  abstract void atRandom(SplittableRandom random, Layout out);

  /** How many pieces of a kind may still go on, by number, mass and hooks. */
  final int available(int kind) {
    int count = left[kind];
    if (!limited || count == 0) {
      return count;
    }
    HangItem item = kinds[kind].item;
    count = Math.min(count, Limits.times(massLeftKg, item.massKg()));
    return item.hooksPerPiece() == 0
        ? count
        : (int) Math.min(count, hooksLeft / item.hooksPerPiece());
  }

  /** Books pieces as hung. */
  final void take(int kind, int count) {
    left[kind] -= count;
    massLeftKg -= count * kinds[kind].item.massKg();
    hooksLeft -= (long) count * kinds[kind].item.hooksPerPiece();
  }

  /** Whether the last fill hung every piece. */
  final boolean nothingLeft() {
    for (int count : left) {
      if (count > 0) {
        return false;
      }
    }
    return true;
  }

  final void key(int kind, double key) {
    keys[kind] = key;
  }

  /** Puts the kinds that wait in order of their keys, largest first; returns how many wait. */
  final int sortWaiting() {
    int n = 0;
    for (int k = 0; k < left.length; k++) {
      if (left[k] > 0) {
        order[n++] = k;
      }
    }
    if (n > 40) {
      Integer[] boxed = new Integer[n];
      for (int i = 0; i < n; i++) {
        boxed[i] = order[i];
      }
      Arrays.sort(boxed, (a, b) -> Double.compare(keys[b], keys[a]));
      for (int i = 0; i < n; i++) {
        order[i] = boxed[i];
      }
      return n;
    }
    for (int i = 1; i < n; i++) {
      int moving = order[i];
      double key = keys[moving];
      int j = i - 1;
      while (j >= 0 && keys[order[j]] < key) {
        order[j + 1] = order[j];
        j--;
      }
      order[j + 1] = moving;
    }
    return n;
  }

  /** A factor around 1 that shuffles keys the more the larger the spread. */
  static double shake(SplittableRandom random, double spread) {
    return spread == 0 ? 1 : 1 + spread * (random.nextDouble() - 0.5);
  }
}
