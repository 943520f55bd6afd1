package spangle.intake.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.intake.source.Datum;
import spangle.intake.source.Grid;

/** Headings in two rows: units or finer names stand below the names of the columns. */
final class Storeys {
  private static final Set<String> PLAIN_UNITS =
      Set.of("pcs", "pc", "pieces", "nos", "no", "ea", "each", "off", "stk", "st\u00fcck", "-");

  private final Map<String, String> learned;

  Storeys(Map<String, String> learned) {
    this.learned = learned;
  }

  /**
   * One row of headings out of two.
   *
   * @return empty where a cell of the lower row is neither a unit of what stands above it nor the
   *     name of a column: then it is a row of the table
   */
  Optional<Grid.Row> join(Grid.Row upper, Grid.Row lower) {
    List<Datum.Scalar> cells = new ArrayList<>();
    boolean says = false;
    for (int i = 0; i < Math.max(upper.cells().size(), lower.cells().size()); i++) {
      Optional<Datum.Scalar> above = cell(upper, i);
      Optional<Datum.Scalar> below = cell(lower, i);
      Optional<Datum.Scalar> both = below.isEmpty() ? above : joined(above, below.get());
      if (both.isEmpty() && below.isPresent()) {
        return Optional.empty();
      }
      says |=
          below.isPresent() && !below.map(Datum.Scalar::text).equals(above.map(Datum.Scalar::text));
      cells.add(both.orElseGet(() -> new Datum.Scalar(upper.place(), "")));
    }
    return says ? Optional.of(new Grid.Row(upper.place(), cells)) : Optional.empty();
  }

  private static Optional<Datum.Scalar> cell(Grid.Row row, int at) {
    return at < row.cells().size() && !row.cells().get(at).isBlank()
        ? Optional.of(row.cells().get(at))
        : Optional.empty();
  }

  private Optional<Datum.Scalar> joined(Optional<Datum.Scalar> above, Datum.Scalar below) {
    if (above.isPresent()) {
      String name = above.get().text().strip();
      String unit = below.text().strip();
      if (name.equals(unit) || PLAIN_UNITS.contains(unit.toLowerCase(Locale.ROOT))) {
        return above;
      }
      Optional<String> alone = key(name);
      // A remark in brackets leaves a name as it is; only a unit makes another column of it.
      String withUnit = name + " (" + unit.replaceAll("^[(\\[]|[)\\]]$", "") + ")";
      Optional<String> both = key(withUnit);
      if (both.isPresent() && alone.isPresent() && !both.equals(alone)) {
        return Optional.of(new Datum.Scalar(above.get().place(), withUnit));
      }
    }
    return key(below.text()).isPresent() ? Optional.of(below) : Optional.empty();
  }

  private Optional<String> key(String text) {
    return JobColumns.key(text, learned).filter(key -> !key.isEmpty());
  }
}
