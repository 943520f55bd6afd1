package spangle.plan.clock;

import java.util.List;
import spangle.plan.SetupTable;

/** Set-up tables as arrays. */
final class Tables {
  private Tables() {}

  static int[][] minutes(SetupTable table) {
    return square(table.minutes());
  }

  static int[][] costs(SetupTable table) {
    return square(table.costs());
  }

  private static int[][] square(List<List<Integer>> rows) {
    if (rows.isEmpty()) {
      return new int[][] {{0}};
    }
    return rows.stream()
        .map(row -> row.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }
}
