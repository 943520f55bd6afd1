package spangle.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Stream;
import spangle.bench.plain.PlainOvens;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * Ours beside others on the same instances, in one run on one machine, each with the same seconds:
 * plain OptaPlanner defaults on the same brief and clock, a constraint program (CP-SAT), and the
 * published best values and annealing.
 *
 * <pre>
 * MethodTable FOLDER --known BEST.csv [--n 25,50,100] [--each K] [--seconds N] [--threads T]
 *     [--exact-most N]
 * </pre>
 *
 * FOLDER's name is the weighting (uc1, uc2, uc3). {@code --each} takes the first K instances of a
 * size; above {@code --exact-most} lots (default 100) the constraint program is not asked.
 */
public final class MethodTable {
  private final Path folder;
  private final BestKnown known;
  private final List<Integer> sizes = new ArrayList<>(List.of(10, 25, 50, 100, 250, 500));
  private int each = 2;
  private double seconds = 60;
  private int threads = 2;
  private int exactMost = 100;
  private final PrintStream out;
  private final Map<Integer, double[]> sums = new TreeMap<>();

  private MethodTable(String[] args, PrintStream out) throws IOException {
    this.out = out;
    this.folder = Path.of(args[0]);
    Optional<Path> best = Optional.empty();
    for (int k = 1; k + 1 < args.length; k += 2) {
      String value = args[k + 1];
      switch (args[k]) {
        case "--known" -> best = Optional.of(Path.of(value));
        case "--n" -> {
          sizes.clear();
          Arrays.stream(value.split(",")).map(Integer::valueOf).forEach(sizes::add);
        }
        case "--each" -> each = Integer.parseInt(value);
        case "--seconds" -> seconds = Double.parseDouble(value);
        case "--threads" -> threads = Integer.parseInt(value);
        case "--exact-most" -> exactMost = Integer.parseInt(value);
        default -> throw new IllegalArgumentException("unknown argument " + args[k]);
      }
    }
    this.known = BestKnown.read(best, folder.getFileName().toString());
  }

  /** Runs it. */
  public static void main(String[] args) throws IOException {
    new MethodTable(args, System.out).run();
  }

  private void run() throws IOException {
    List<Path> files;
    try (Stream<Path> found = Files.list(folder)) {
      files = found.filter(file -> file.toString().endsWith(".dzn")).sorted().toList();
    }
    out.println(
        "gap to the best published value, per cent; "
            + seconds
            + " s and "
            + threads
            + " threads each (plain OptaPlanner: one)");
    out.println("| instance | n | best | ours | annealing | plain OptaPlanner | CP-SAT |");
    out.println("|---|---|---|---|---|---|---|");
    Map<Integer, Integer> taken = new TreeMap<>();
    for (Path file : files) {
      OvenInstance instance = OvenInstance.read(file);
      int n = instance.number("n");
      if (sizes.contains(n) && taken.merge(n, 1, Integer::sum) <= each) {
        row(file.getFileName().toString(), instance, n);
      }
    }
    sums.forEach(
        (n, sum) ->
            out.printf(
                Locale.ROOT,
                "| mean of %.0f | %d | | %s | %s | %s | %s |%n",
                sum[4],
                n,
                mean(sum, 0),
                mean(sum, 1),
                mean(sum, 2),
                mean(sum, 3)));
  }

  private void row(String name, OvenInstance instance, int n) {
    Optional<BestKnown.Known> best = known.of(name);
    if (best.isEmpty()) {
      return;
    }
    Brief brief = OvenBrief.of(name, instance);
    Plan plan =
        new Solver()
            .solve(brief, new SolveOptions(seconds, 0, 1, threads), ProgressListener.NOBODY);
    long ours = plan.figures().goal() - plan.figures().leftOut() * brief.goals().leftOut();
    OptionalLong mine = plan.leftOut().isEmpty() ? OptionalLong.of(ours) : OptionalLong.empty();
    OptionalLong plain = PlainOvens.solve(brief, seconds);
    OptionalLong exact = OptionalLong.empty();
    String mark = n > exactMost ? "not asked" : "none found";
    if (n <= exactMost) {
      ExactOvens.Answer answer = ExactOvens.solveWhole(brief, seconds, threads);
      if (answer.found()) {
        exact = OptionalLong.of(answer.value());
        mark = answer.proven() ? " proven" : "";
      }
    }
    double[] gaps = {
      gap(mine, instance, best.get()),
      100 * (best.get().annealing() / best.get().best() - 1),
      gap(plain, instance, best.get()),
      gap(exact, instance, best.get())
    };
    double[] sum = sums.computeIfAbsent(n, k -> new double[5]);
    for (int i = 0; i < gaps.length; i++) {
      sum[i] += gaps[i];
    }
    sum[4]++;
    out.printf(
        Locale.ROOT,
        "| %s | %d | %.6f%s | %s | %s | %s | %s |%n",
        name.replaceAll("^(\\d+).*", "$1"),
        n,
        best.get().best(),
        best.get().proven() ? " proven" : "",
        words(gaps[0], ""),
        words(gaps[1], ""),
        words(gaps[2], "none found"),
        words(gaps[3], mark));
    out.flush();
  }

  private static double gap(OptionalLong value, OvenInstance instance, BestKnown.Known best) {
    return value.isEmpty()
        ? Double.NaN
        : 100 * (value.getAsLong() / (double) instance.norm() / best.best() - 1);
  }

  private static String words(double gap, String mark) {
    return Double.isNaN(gap)
        ? mark
        : String.format(Locale.ROOT, "%+.2f%s", gap, mark.equals(" proven") ? mark : "");
  }

  private static String mean(double[] sum, int place) {
    return Double.isNaN(sum[place]) ? "" : String.format(Locale.ROOT, "%+.2f", sum[place] / sum[4]);
  }
}
