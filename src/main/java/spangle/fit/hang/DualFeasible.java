package spangle.fit.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Functions of a size within a whole whose values, over any sizes that go into the whole together,
 * add up to at most 1. Worked in whole numbers up to the last division, so that a half is a half.
 */
@FunctionalInterface
interface DualFeasible {
  /** More sizes than this add time but hardly anything to a bound. */
  int MOST_SIZES = 48;

  /** Value of a size between 1 and the whole, 0 to 1. */
  double of(long size);

  /**
   * The families used for bounds, with thresholds taken from the sizes there are: the share itself,
   * rounded shares (u(k), Lueker 1983), thresholds (U(epsilon), Fekete and Schepers 2004) and
   * counts (f2(k), Carlier, Clautiaux and Moukrim 2007).
   */
  static List<DualFeasible> of(long whole, SortedSet<Integer> sizes) {
    List<DualFeasible> functions = new ArrayList<>();
    functions.add(size -> (double) size / whole);
    for (int k = 1; k <= 6; k++) {
      int steps = k;
      functions.add(size -> rounded(size, whole, steps));
    }
    TreeSet<Long> small = new TreeSet<>();
    for (int size : sizes) {
      small.add(2L * size <= whole ? size : whole - size + 1);
    }
    small.removeIf(size -> size < 1 || 2 * size > whole);
    long step = Math.max(1, (small.size() + MOST_SIZES - 1) / MOST_SIZES);
    long index = 0;
    for (long size : small) {
      if (index++ % step == 0) {
        functions.add(x -> threshold(x, whole, size));
        functions.add(x -> counted(x, whole, size));
      }
    }
    return functions;
  }

  /** (k+1) x rounded down over k, but x itself where (k+1) x is whole. */
  private static double rounded(long size, long whole, int k) {
    long product = size * (k + 1);
    long times = product / whole;
    return product % whole == 0 ? (double) size / whole : (double) times / k;
  }

  /** What leaves less than the threshold counts whole, what is smaller than it not at all. */
  private static double threshold(long size, long whole, long least) {
    if (size > whole - least) {
      return 1;
    }
    return size < least ? 0 : (double) size / whole;
  }

  /** Counts how many of a small size a piece takes; above the half, how many it keeps out. */
  private static double counted(long size, long whole, long unit) {
    long most = whole / unit;
    if (2 * size == whole) {
      return 0.5;
    }
    long count = 2 * size > whole ? most - (whole - size) / unit : size / unit;
    return (double) count / most;
  }
}
