package spangle.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.solve.Progress;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * Plans instances of the Oven Scheduling Problem with the product's own brief, solver and clock.
 *
 * <pre>
 * OvenBenchmark FILE.dzn [--seconds N] [--seed S] [--threads T] [--course] [--out SOLUTION.json]
 * OvenBenchmark FOLDER --table [--every K] [--known BEST.csv] [--seconds N] ... [--out FOLDER]
 * </pre>
 */
public final class OvenBenchmark {
  private final Arguments arguments;
  private final PrintStream out;

  private OvenBenchmark(Arguments arguments, PrintStream out) {
    this.arguments = arguments;
    this.out = out;
  }

  /** Runs it. */
  public static void main(String[] args) throws IOException {
    Arguments arguments = Arguments.of(args);
    OvenBenchmark benchmark = new OvenBenchmark(arguments, System.out);
    if (arguments.table()) {
      benchmark.table();
    } else {
      benchmark.single(arguments.path());
    }
  }

  private void single(Path file) throws IOException {
    OvenInstance instance = OvenInstance.read(file);
    List<Progress> steps = new ArrayList<>();
    OvenResult result = plan(file, instance, steps);
    if (arguments.out().isPresent()) {
      Files.writeString(arguments.out().get(), OvenSolution.json(result.plan()));
    }
    if (arguments.course()) {
      Course.lines(steps, instance.norm()).forEach(out::println);
    }
    out.println(result.line());
  }

  private OvenResult plan(Path file, OvenInstance instance, List<Progress> steps) {
    Brief brief = OvenBrief.of(file.getFileName().toString(), instance);
    double seconds = arguments.secondsFor(brief.lots().size());
    Plan plan =
        new Solver()
            .solve(
                brief,
                new SolveOptions(seconds, arguments.steps(), arguments.seed(), arguments.threads()),
                steps::add);
    return OvenResult.of(file.getFileName().toString(), instance, brief, plan, steps);
  }

  private void table() throws IOException {
    List<Path> files;
    try (Stream<Path> found = Files.list(arguments.path())) {
      files =
          found
              .filter(file -> file.toString().endsWith(".dzn"))
              .sorted((a, b) -> Integer.compare(number(a), number(b)))
              .toList();
    }
    BestKnown known = BestKnown.read(arguments.known(), arguments.path().getFileName().toString());
    OvenTable table = new OvenTable(known);
    out.println(OvenTable.HEAD);
    for (int k = arguments.from(); k < files.size(); k += arguments.every()) {
      Path file = files.get(k);
      OvenInstance instance = OvenInstance.read(file);
      int jobs = instance.number("n");
      if (jobs < arguments.least() || jobs > arguments.most()) {
        continue;
      }
      OvenResult result = plan(file, instance, new ArrayList<>());
      if (arguments.out().isPresent()) {
        Files.createDirectories(arguments.out().get());
        Files.writeString(
            arguments.out().get().resolve(file.getFileName() + ".json"),
            OvenSolution.json(result.plan()));
      }
      out.println(table.row(result));
    }
    table.summary().forEach(out::println);
  }

  private static int number(Path file) {
    String digits = file.getFileName().toString().replaceAll("^\\D*(\\d+).*$", "$1");
    return Integer.parseInt(digits);
  }

  /** A solution in the benchmark's own form. */
  static final class OvenSolution {
    private OvenSolution() {}

    static String json(Plan plan) {
      List<String> batches = new ArrayList<>();
      for (PlannedBatch batch : plan.batches()) {
        List<String> jobs = new ArrayList<>();
        batch.loads().forEach(load -> jobs.addAll(load.lotIds()));
        batches.add(
            String.format(
                Locale.ROOT,
                "{\"machine\": %s, \"start\": %d, \"duration\": %d, \"jobs\": [%s]}",
                batch.machineId().replace("oven-", ""),
                batch.startMin(),
                batch.dwellMin(),
                String.join(", ", jobs)));
      }
      return "{\"batches\": [\n" + String.join(",\n", batches) + "\n]}\n";
    }
  }
}
