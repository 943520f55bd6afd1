package spangle.plan;

import java.util.List;

/**
 * Set-ups from one state to another: colour changes in a booth, setting changes in an oven. Row =
 * from, column = to; the list lengths are equal. {@code costs} are what the goals weigh, which need
 * not be minutes.
 *
 * @param states names of the states
 * @param minutes minutes[from][to]
 * @param costs costs[from][to]
 */
public record SetupTable(
    List<String> states, List<List<Integer>> minutes, List<List<Integer>> costs) {
  /** Copies the rows. */
  public SetupTable {
    states = List.copyOf(states);
    minutes = minutes.stream().map(List::copyOf).toList();
    costs = costs.stream().map(List::copyOf).toList();
    if (minutes.size() != states.size() || costs.size() != states.size()) {
      throw new IllegalArgumentException("a set-up table needs one row per state: " + states);
    }
  }

  /** No set-up between any of so many states. */
  public static SetupTable none(List<String> states) {
    List<Integer> row = states.stream().map(s -> 0).toList();
    List<List<Integer>> rows = states.stream().map(s -> row).toList();
    return new SetupTable(states, rows, rows);
  }

  /** Minutes of the change. */
  public int minutes(int from, int to) {
    return minutes.get(from).get(to);
  }

  /** Weighed cost of the change. */
  public int cost(int from, int to) {
    return costs.get(from).get(to);
  }
}
