package spangle.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spangle.solve.Progress;

/** The way of one search: the best plan so far at ever longer times. */
final class Course {
  private static final double[] MARKS_S = {1, 2, 5, 10, 20, 30, 60, 120, 180, 240, 300, 450, 600};

  private Course() {}

  /** The first plan and the best at each mark that the search went past. */
  static List<String> lines(List<Progress> steps, long norm) {
    List<String> lines = new ArrayList<>();
    if (steps.isEmpty()) {
      return lines;
    }
    lines.add(line(steps.get(0).seconds(), steps.get(0), norm));
    double last = steps.get(steps.size() - 1).seconds();
    int k = 0;
    for (double mark : MARKS_S) {
      while (k + 1 < steps.size() && steps.get(k + 1).seconds() <= mark) {
        k++;
      }
      if (steps.get(k).seconds() <= mark && mark < last) {
        lines.add(line(mark, steps.get(k), norm));
      }
    }
    return lines;
  }

  private static String line(double atSeconds, Progress plan, long norm) {
    return String.format(
        Locale.ROOT,
        "%7.2f s value %.6f late %d batches %d left out %d",
        atSeconds,
        (double) plan.goal() / norm,
        plan.lateLots(),
        plan.batches(),
        plan.leftOut());
  }
}
