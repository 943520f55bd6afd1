package spangle.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import spangle.solve.SolveOptions;

/** How long a search goes on and from which seed. */
final class SearchOptions {
  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "Longest search; it ends sooner when nothing gets better. Default: 10.")
  private double seconds = 10;

  @Option(
      names = "--steps",
      paramLabel = "N",
      description = "Moves to try instead of seconds: the same seed gives the same bytes again.")
  private long steps;

  @Option(names = "--seed", paramLabel = "N", description = "Random seed. Default: 1.")
  private long seed = 1;

  SolveOptions read(CommandSpec spec) {
    if (!(seconds > 0 && seconds <= 86_400) || steps < 0) {
      throw new ParameterException(
          spec.commandLine(), "--seconds lies above 0 and up to 86400, --steps at 0 or above");
    }
    return new SolveOptions(seconds, steps, seed, 1);
  }
}
