package spangle.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import spangle.solve.SolveOptions;

/** How long a search goes on, from which seed and on how many threads. */
final class SearchOptions {
  private static final double MOST_SECONDS = 86_400;
  private static final int MOST_THREADS = 64;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description =
          "Longest search; it ends sooner when nothing gets better. Default: 30 for plan, 10 for"
              + " replan.")
  private double seconds;

  @Option(
      names = "--steps",
      paramLabel = "N",
      description =
          "Moves to try on each thread instead of seconds: the same seed gives the same bytes.")
  private long steps;

  @Option(names = "--seed", paramLabel = "N", description = "Random seed. Default: 1.")
  private long seed = 1;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description =
          "Searches side by side that compare notes; the best plan counts. Default: 2 for plan, 1"
              + " for replan.")
  private int threads;

  /** What a command does where nothing is said. */
  SearchOptions(double seconds, int threads) {
    this.seconds = seconds;
    this.threads = threads;
  }

  SolveOptions read(CommandSpec spec) {
    if (!(seconds > 0 && seconds <= MOST_SECONDS)
        || steps < 0
        || threads < 1
        || threads > MOST_THREADS) {
      throw new ParameterException(
          spec.commandLine(),
          "--seconds lies above 0 and up to 86400, --steps at 0 or above, --threads from 1 to 64");
    }
    return new SolveOptions(seconds, steps, seed, threads);
  }
}
