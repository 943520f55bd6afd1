package spangle.plan.bound;

import java.util.TreeSet;

/**
 * How many wholes a set of shares needs at least, when what goes into one whole never adds up to
 * more than 1.
 *
 * <p>Dual feasible functions: the share itself, rounded shares (u(k), Lueker, "Bin packing with
 * items uniformly distributed over intervals", 1983) and thresholds (Fekete and Schepers, "New
 * classes of fast lower bounds for bin packing problems", Mathematical Programming 91, 2001). Sums
 * of decimals are compared with a tolerance that always errs to the low side.
 */
final class Shares {
  private static final double ROUNDING = 1e-6;

  /** What a division of whole numbers may be out by. */
  private static final double NOISE = 1e-12;

  private static final int STEPS = 6;
  private static final int MOST_THRESHOLDS = 24;

  private Shares() {}

  /** Fewest wholes. */
  static int fewest(double[] shares, int count) {
    if (count == 0) {
      return 0;
    }
    double sum = 0;
    TreeSet<Double> small = new TreeSet<>();
    for (int i = 0; i < count; i++) {
      sum += shares[i];
      double least = Math.min(shares[i], 1 - shares[i]);
      if (least > ROUNDING) {
        small.add(Math.rint(least * 1000) / 1000);
      }
    }
    int fewest = Math.max(1, up(sum));
    for (int k = 1; k <= STEPS; k++) {
      double rounded = 0;
      for (int i = 0; i < count; i++) {
        rounded += rounded(shares[i], k);
      }
      fewest = Math.max(fewest, up(rounded));
    }
    int step = Math.max(1, (small.size() + MOST_THRESHOLDS - 1) / MOST_THRESHOLDS);
    int index = 0;
    for (double threshold : small) {
      if (index++ % step == 0) {
        fewest = Math.max(fewest, up(thresholds(shares, count, threshold)));
      }
    }
    return fewest;
  }

  private static int up(double sum) {
    return (int) Math.ceil(sum - ROUNDING);
  }

  private static double rounded(double share, int k) {
    double times = share * (k + 1) + NOISE;
    double whole = Math.floor(times);
    return times - whole < ROUNDING * (k + 1) ? Math.min(share, whole / k) : whole / k;
  }

  private static double thresholds(double[] shares, int count, double threshold) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      if (shares[i] > 1 - threshold + ROUNDING) {
        sum += 1;
      } else if (shares[i] >= threshold) {
        sum += shares[i];
      }
    }
    return sum;
  }
}
