package spangle.plan.bound;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntBinaryOperator;

/**
 * Fewest or cheapest changes when states must be entered at least so many times: every entry costs
 * no less than the cheapest way in, and a state nothing stands at when the week begins is entered
 * at least once from another one.
 */
final class SetupFloor {
  private SetupFloor() {}

  /**
   * The floor.
   *
   * @param entries how often each state is wanted at least
   * @param starts states machines or places stand at when the week begins
   * @param others further states that may come between
   * @param cost from-to
   */
  static long of(
      Map<Integer, Integer> entries,
      Set<Integer> starts,
      Collection<Integer> others,
      IntBinaryOperator cost) {
    long sum = 0;
    for (Map.Entry<Integer, Integer> entry : entries.entrySet()) {
      int to = entry.getKey();
      int times = entry.getValue();
      if (times == 0) {
        continue;
      }
      long fromOther = Long.MAX_VALUE;
      for (Collection<Integer> states : List.of(entries.keySet(), starts, others)) {
        for (int from : states) {
          if (from != to) {
            fromOther = Math.min(fromOther, cost.applyAsInt(from, to));
          }
        }
      }
      long again = Math.min(fromOther, cost.applyAsInt(to, to));
      long first = starts.contains(to) ? again : fromOther;
      if (first == Long.MAX_VALUE) {
        first = again;
      }
      sum += first + (times - 1L) * again;
    }
    return sum;
  }
}
