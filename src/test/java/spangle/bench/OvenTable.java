package spangle.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A table of results with the means of the gaps to the best published values by size. */
final class OvenTable {
  static final String HEAD =
      "instance n value gap% sa1M% run late setup-cost left first-s near-s last-s";

  private final BestKnown known;
  private final Map<Integer, List<double[]>> gaps = new TreeMap<>();

  OvenTable(BestKnown known) {
    this.known = known;
  }

  String row(OvenResult result) {
    Optional<BestKnown.Known> best = known.of(result.name());
    double gap = best.map(k -> 100 * (result.value() / k.best() - 1)).orElse(Double.NaN);
    double published = best.map(k -> 100 * (k.annealing() / k.best() - 1)).orElse(Double.NaN);
    double missed =
        best.map(k -> k.proven() && result.value() > k.best() * (1 + 2e-6) ? 1.0 : 0.0).orElse(0.0);
    double proven = best.map(k -> k.proven() ? 1.0 : 0.0).orElse(0.0);
    gaps.computeIfAbsent(result.jobs(), n -> new ArrayList<>())
        .add(new double[] {gap, published, missed, proven, result.plan().figures().leftOut()});
    return String.format(
        Locale.ROOT,
        "%s %d %.6f %.2f %.2f %d %d %d %d %.2f %.1f %.1f",
        result.name(),
        result.jobs(),
        result.value(),
        gap,
        published,
        result.plan().figures().runMinutes(),
        result.plan().figures().lateLots(),
        result.plan().figures().settingCost(),
        result.plan().figures().leftOut(),
        result.firstSeconds(),
        result.nearSeconds(),
        result.lastSeconds());
  }

  List<String> summary() {
    List<String> lines = new ArrayList<>();
    List<double[]> all = new ArrayList<>();
    List<double[]> large = new ArrayList<>();
    gaps.forEach(
        (jobs, rows) -> {
          lines.add(mean("n " + jobs, rows));
          all.addAll(rows);
          if (jobs >= 100) {
            large.addAll(rows);
          }
        });
    if (!large.isEmpty()) {
      lines.add(mean("n >= 100", large));
    }
    lines.add(mean("all", all));
    return lines;
  }

  private static String mean(String what, List<double[]> rows) {
    double[] sum = new double[5];
    for (double[] row : rows) {
      for (int k = 0; k < sum.length; k++) {
        sum[k] += row[k];
      }
    }
    int n = Math.max(1, rows.size());
    return String.format(
        Locale.ROOT,
        "%s: %d instances, mean gap %.2f %%, published annealing %.2f %%, proven optima missed"
            + " %.0f of %.0f, left out %.0f",
        what,
        rows.size(),
        sum[0] / n,
        sum[1] / n,
        sum[2],
        sum[3],
        sum[4]);
  }
}
