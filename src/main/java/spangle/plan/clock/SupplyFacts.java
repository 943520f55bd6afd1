package spangle.plan.clock;

import java.util.Comparator;
import java.util.List;
import spangle.plan.Supply;

/** When how much of a material has come in all. */
final class SupplyFacts {
  private final int[] atMin;
  private final double[] sum;

  SupplyFacts(Supply supply) {
    List<Supply.Arrival> arrivals =
        supply.arrivals().stream().sorted(Comparator.comparingInt(Supply.Arrival::atMin)).toList();
    atMin = new int[arrivals.size()];
    sum = new double[arrivals.size()];
    double total = 0;
    for (int i = 0; i < atMin.length; i++) {
      total += arrivals.get(i).amount();
      atMin[i] = arrivals.get(i).atMin();
      sum[i] = total;
    }
  }

  /** The first minute at which that much has come; {@link Hours#NEVER} where it never does. */
  int there(double amount) {
    if (amount <= 1e-9) {
      return 0;
    }
    for (int i = 0; i < sum.length; i++) {
      if (sum[i] >= amount - 1e-9) {
        return Math.max(0, atMin[i]);
      }
    }
    return Hours.NEVER;
  }
}
