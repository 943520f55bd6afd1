package spangle.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.bound.WeekBounds;

/**
 * The product's floors beside the best published values of oven instances: none may lie above.
 *
 * <pre>
 * BoundTable FOLDER --known BEST.csv
 * </pre>
 *
 * where FOLDER holds one folder of instances per weighting. Ends with 1 where a floor lies above a
 * known value.
 */
public final class BoundTable {
  private final PrintStream out;
  private int above;

  private BoundTable(PrintStream out) {
    this.out = out;
  }

  /** Runs it. */
  public static void main(String[] args) throws IOException {
    if (args.length != 3 || !args[1].equals("--known")) {
      throw new IllegalArgumentException("BoundTable FOLDER --known BEST.csv");
    }
    BoundTable table = new BoundTable(System.out);
    List<Path> folders;
    try (Stream<Path> found = Files.list(Path.of(args[0]))) {
      folders = found.filter(Files::isDirectory).sorted().toList();
    }
    for (Path folder : folders) {
      table.folder(folder, Optional.of(Path.of(args[2])));
    }
    table.out.println("floors above a known value: " + table.above);
    if (table.above > 0) {
      System.exit(1);
    }
  }

  private void folder(Path folder, Optional<Path> knownFile) throws IOException {
    String useCase = folder.getFileName().toString();
    BestKnown known = BestKnown.read(knownFile, useCase);
    List<Path> files;
    try (Stream<Path> found = Files.list(folder)) {
      files = found.filter(file -> file.toString().endsWith(".dzn")).sorted().toList();
    }
    Map<Integer, List<double[]>> bySize = new TreeMap<>();
    for (Path file : files) {
      OvenInstance instance = OvenInstance.read(file);
      String name = file.getFileName().toString();
      Brief brief = OvenBrief.of(name, instance);
      Set<String> lots = brief.lots().stream().map(Lot::id).collect(Collectors.toSet());
      long start = System.nanoTime();
      WeekBounds bounds = WeekBounds.of(brief, lots);
      double seconds = (System.nanoTime() - start) / 1e9;
      double value = (double) bounds.goal() / instance.norm();
      Optional<BestKnown.Known> best = known.of(name);
      if (best.isPresent()) {
        double gap = 100 * (1 - value / best.get().best());
        bySize
            .computeIfAbsent(brief.lots().size(), n -> new ArrayList<>())
            .add(new double[] {gap, seconds});
        if (value > best.get().best() * (1 + 2e-6)) {
          above++;
          out.println(name + " floor " + value + " above " + best.get().best());
        }
      }
      out.printf(
          Locale.ROOT,
          "%s %s n %d floor %.6f best %s batches %d run %d set-up cost %d late %d %.2f s%n",
          useCase,
          name,
          brief.lots().size(),
          value,
          best.map(b -> String.format(Locale.ROOT, "%.6f", b.best())).orElse("-"),
          bounds.ovenBatches(),
          bounds.machineMinutes(),
          bounds.settingCost(),
          bounds.lateLots(),
          seconds);
    }
    bySize.forEach(
        (n, rows) ->
            out.printf(
                Locale.ROOT,
                "%s n %d: %d instances, floor below best by %.1f %% in the mean, %.2f s%n",
                useCase,
                n,
                rows.size(),
                rows.stream().mapToDouble(r -> r[0]).average().orElse(0),
                rows.stream().mapToDouble(r -> r[1]).average().orElse(0)));
  }
}
