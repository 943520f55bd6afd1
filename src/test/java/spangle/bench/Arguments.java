package spangle.bench;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What the benchmark was asked for.
 *
 * @param path an instance, or a folder of them
 * @param table whether a table over the folder is wanted
 * @param course whether the way of a single instance is wanted, from the first plan to the last
 * @param seconds most seconds for each instance
 * @param steps moves per thread in place of seconds; 0 = by time
 * @param smallSeconds most seconds for instances of up to 50 jobs
 * @param seed random seed
 * @param threads threads
 * @param every every so manieth instance only
 * @param from first of them
 * @param least fewest jobs
 * @param most most jobs
 * @param known best published values
 * @param out where solutions go
 */
record Arguments(
    Path path,
    boolean table,
    boolean course,
    double seconds,
    long steps,
    double smallSeconds,
    long seed,
    int threads,
    int every,
    int from,
    int least,
    int most,
    Optional<Path> known,
    Optional<Path> out) {

  double secondsFor(int jobs) {
    return jobs <= 50 ? Math.min(seconds, smallSeconds) : seconds;
  }

  static Arguments of(String[] args) {
    Path path = Path.of(args[0]);
    boolean table = false;
    boolean course = false;
    double seconds = 60;
    double small = 10;
    long steps = 0;
    long seed = 1;
    int threads = 2;
    int every = 1;
    int from = 0;
    int least = 0;
    int most = Integer.MAX_VALUE;
    Optional<Path> known = Optional.empty();
    Optional<Path> out = Optional.empty();
    for (int k = 1; k < args.length; k++) {
      String value = k + 1 < args.length ? args[k + 1] : "";
      switch (args[k]) {
        case "--table" -> {
          table = true;
          continue;
        }
        case "--course" -> {
          course = true;
          continue;
        }
        case "--seconds" -> seconds = Double.parseDouble(value);
        case "--steps" -> steps = Long.parseLong(value);
        case "--small-seconds" -> small = Double.parseDouble(value);
        case "--seed" -> seed = Long.parseLong(value);
        case "--threads" -> threads = Integer.parseInt(value);
        case "--every" -> every = Integer.parseInt(value);
        case "--from" -> from = Integer.parseInt(value);
        case "--least" -> least = Integer.parseInt(value);
        case "--most" -> most = Integer.parseInt(value);
        case "--known" -> known = Optional.of(Path.of(value));
        case "--out" -> out = Optional.of(Path.of(value));
        default -> throw new IllegalArgumentException("unknown argument " + args[k]);
      }
      k++;
    }
    return new Arguments(
        path, table, course, seconds, steps, small, seed, threads, every, from, least, most, known,
        out);
  }
}
