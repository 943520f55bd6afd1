package spangle.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Published values by instance file, as a table with a heading row has them. */
final class BestKnown {
  /** One row: best value, the lower bound, and the published annealing's mean. */
  record Known(double best, double bound, double annealing, boolean proven) {}

  private final Map<String, Known> byFile = new HashMap<>();

  static BestKnown read(Optional<Path> file, String useCase) throws IOException {
    BestKnown known = new BestKnown();
    if (file.isEmpty()) {
      return known;
    }
    List<String> lines = Files.readAllLines(file.get());
    List<String> head = Arrays.asList(lines.get(0).split(","));
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      if (cells[head.indexOf("use_case")].equals(useCase)) {
        known.byFile.put(
            cells[head.indexOf("file")],
            new Known(
                Double.parseDouble(cells[head.indexOf("best_norm")]),
                Double.parseDouble(cells[head.indexOf("lb_norm")]),
                Double.parseDouble(cells[head.indexOf("sa1M_mean_norm")]),
                cells[head.indexOf("proven_optimal")].equals("1")));
      }
    }
    return known;
  }

  Optional<Known> of(String file) {
    return Optional.ofNullable(byFile.get(file));
  }
}
