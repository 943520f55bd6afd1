package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import spangle.intake.problem.Meanwhile;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Grid;
import spangle.intake.source.Near;

/** Finds the headings of a table and turns every row below them into a group of named values. */
final class TableRows {
  private static final int HEADING_WITHIN = 40;
  private static final int FEWEST_KNOWN = 3;

  private static final Pattern CUSTOMER =
      Pattern.compile("(?:customer|client|kunde)\\s*[:=-]\\s*(\\S.*)", Pattern.CASE_INSENSITIVE);

  private final Grid grid;
  private final Map<String, String> learned;
  private final Notes notes;

  private TableRows(Grid grid, Map<String, String> learned, Notes notes) {
    this.grid = grid;
    this.learned = learned;
    this.notes = notes;
  }

  /**
   * Rows of a table.
   *
   * @param learned names of this customer
   */
  static List<Datum.Group> of(Grid grid, Map<String, String> learned, Notes notes) {
    return new TableRows(grid, learned, notes).rows();
  }

  private List<Datum.Group> rows() {
    int heading = heading();
    if (heading < 0) {
      if (grid.rows().stream().anyMatch(row -> !row.isBlank())) {
        notes.add(
            ProblemCode.NO_HEADING,
            grid.place(),
            "",
            "",
            String.join(", ", JobColumns.names()),
            "no row within the first "
                + HEADING_WITHIN
                + " looks like headings; the table is left out whole",
            "put a row of headings above the parts: job, part, qty, material, thickness_mm ...");
      }
      return List.of();
    }
    List<Grid.Row> below = grid.rows().subList(heading + 1, grid.rows().size());
    Storeys storeys = new Storeys(learned);
    Grid.Row headings = grid.rows().get(heading);
    Optional<Grid.Row> joined =
        below.isEmpty() ? Optional.empty() : storeys.join(headings, below.get(0));
    headings = joined.orElse(headings);
    List<String> keys = keys(headings, below);
    List<Datum.Group> groups = new ArrayList<>();
    Optional<Datum.Scalar> customer = Optional.empty();
    for (int i = joined.isPresent() ? 1 : 0; i < below.size(); i++) {
      Grid.Row row = below.get(i);
      if (isHeadings(row)) {
        // Lists repeat their headings on every page, or go on with a table of another order.
        Optional<Grid.Row> both =
            i + 1 < below.size() ? storeys.join(row, below.get(i + 1)) : Optional.empty();
        i += both.isPresent() ? 1 : 0;
        Grid.Row again = both.orElse(row);
        if (!texts(again).equals(texts(headings))) {
          headings = again;
          keys = keys(headings, below.subList(i + 1, below.size()));
        }
      } else if (customer(row).isPresent()) {
        customer = customer(row);
      } else if (!row.isBlank()) {
        groups.add(group(row, keys, customer));
      }
    }
    return groups;
  }

  /** Whether the grid has a row that looks like headings. */
  static boolean hasHeading(Grid grid, Map<String, String> learned, Notes quiet) {
    return new TableRows(grid, learned, quiet).heading() >= 0;
  }

  /** Whether a row below the headings is headings too: most of its cells are words for columns. */
  private boolean isHeadings(Grid.Row row) {
    long said = row.cells().stream().filter(cell -> !cell.isBlank()).count();
    long known = known(row);
    return known >= FEWEST_KNOWN && 2 * known > said;
  }

  private long known(Grid.Row row) {
    return row.cells().stream()
        .map(cell -> JobColumns.key(cell.text(), learned))
        .flatMap(Optional::stream)
        .filter(key -> !key.isEmpty())
        .distinct()
        .count();
  }

  private static List<String> texts(Grid.Row row) {
    List<String> texts =
        new ArrayList<>(row.cells().stream().map(Datum.Scalar::text).map(String::strip).toList());
    while (!texts.isEmpty() && texts.get(texts.size() - 1).isEmpty()) {
      texts.remove(texts.size() - 1);
    }
    return texts;
  }

  private int heading() {
    int best = -1;
    long bestKnown = FEWEST_KNOWN - 1;
    int last = Math.min(HEADING_WITHIN, grid.rows().size());
    for (int i = 0; i < last; i++) {
      long known = known(grid.rows().get(i));
      if (known > bestKnown) {
        best = i;
        bestKnown = known;
      }
    }
    return best;
  }

  private List<String> keys(Grid.Row headings, List<Grid.Row> below) {
    List<String> keys = new ArrayList<>();
    for (Datum.Scalar cell : headings.cells()) {
      Optional<String> key = JobColumns.key(cell.text(), learned);
      if (key.isEmpty() && !cell.isBlank()) {
        unknown(cell);
      }
      keys.add(key.orElse(""));
    }
    routeAmongFinishes(keys, below);
    for (int i = 0; i < keys.size(); i++) {
      int first = keys.indexOf(keys.get(i));
      if (!keys.get(i).isEmpty() && first < i) {
        twice(headings, keys, first, i);
      }
    }
    return keys;
  }

  /** Of two columns of one name a clear heading wins over a weak one; else the first is used. */
  private void twice(Grid.Row headings, List<String> keys, int first, int second) {
    String name = keys.get(second);
    Datum.Scalar a = headings.cells().get(first);
    Datum.Scalar b = headings.cells().get(second);
    boolean clear = JobColumns.weak(a.text()) != JobColumns.weak(b.text());
    boolean otherWay = clear && JobColumns.weak(a.text());
    notes.add(
        ProblemCode.COLUMN_TWICE,
        b.place(),
        name,
        b.text(),
        "",
        clear
            ? "'"
                + a.text()
                + "' and '"
                + b.text()
                + "' may both be '"
                + name
                + "'; '"
                + (otherWay ? b : a).text()
                + "' is used"
            : "two columns are '" + name + "'; the first that says something is used",
        "take one out, or rename it");
    if (clear) {
      keys.set(otherWay ? first : second, "");
    }
  }

  /**
   * Where several columns are called by words for a finish and none is the route, the one whose
   * cells are words for a way through the shop is the route.
   */
  private static void routeAmongFinishes(List<String> keys, List<Grid.Row> below) {
    if (keys.contains("route") || keys.indexOf("finish") == keys.lastIndexOf("finish")) {
      return;
    }
    int best = -1;
    long most = 0;
    for (int i = 0; i < keys.size(); i++) {
      int column = i;
      long ways =
          !keys.get(i).equals("finish")
              ? 0
              : below.stream()
                  .limit(HEADING_WITHIN)
                  .filter(row -> row.cells().size() > column)
                  .filter(row -> RouteWords.find(row.cells().get(column).text()).isPresent())
                  .count();
      if (ways > most) {
        most = ways;
        best = i;
      }
    }
    if (best >= 0) {
      keys.set(best, "route");
    }
  }

  private void unknown(Datum.Scalar cell) {
    String file = cell.place().file();
    notes.add(
        new Problem(
            ProblemCode.UNKNOWN_COLUMN,
            ProblemCode.UNKNOWN_COLUMN.severity(),
            cell.place(),
            "",
            cell.text(),
            "",
            "no column of the program is called '"
                + cell.text()
                + "'"
                + Near.hint(cell.text(), JobColumns.names()),
            "rename it, or teach it in columns.yaml: files: \""
                + file.substring(file.lastIndexOf('/') + 1)
                + "\", names: {\""
                + cell.text()
                + "\": key or ignore}",
            Meanwhile.IGNORED,
            "column/" + file + "/" + cell.text(),
            "",
            "",
            Problem.NO_DUE));
  }

  /** A line of its own that names the customer of the rows below it. */
  private static Optional<Datum.Scalar> customer(Grid.Row row) {
    List<Datum.Scalar> said = row.cells().stream().filter(cell -> !cell.isBlank()).toList();
    if (said.size() != 1) {
      return Optional.empty();
    }
    Matcher named = CUSTOMER.matcher(said.get(0).text().strip());
    return named.matches()
        ? Optional.of(new Datum.Scalar(said.get(0).place(), named.group(1)))
        : Optional.empty();
  }

  private Datum.Group group(Grid.Row row, List<String> keys, Optional<Datum.Scalar> customer) {
    Map<String, Datum.Entry> entries = new LinkedHashMap<>();
    for (int i = 0; i < row.cells().size(); i++) {
      Datum.Scalar cell = row.cells().get(i);
      String key = i < keys.size() ? keys.get(i) : "";
      if (key.isEmpty()) {
        if (i > keys.size() && !cell.isBlank() && !cell.place().cell().isEmpty()) {
          // Cells of a spreadsheet stand where they are; next to the last column one may be
          // shifted, further off it is a note.
          beside(cell);
        } else if (i >= keys.size() && !cell.isBlank()) {
          // Kept under a name nobody reads, so that the row names it and is refused.
          entries.put(EXTRA + (i + 1), new Datum.Entry(cell.place(), cell));
        }
        continue;
      }
      if (!says(entries.get(key))) {
        entries.put(key, new Datum.Entry(cell.place(), cell));
      }
    }
    if (customer.isPresent() && !says(entries.get("customer"))) {
      entries.put("customer", new Datum.Entry(customer.get().place(), customer.get()));
    }
    return new Datum.Group(rowPlace(row.place()), entries);
  }

  private static boolean says(Datum.@Nullable Entry entry) {
    return entry != null && !(entry.value() instanceof Datum.Scalar scalar && scalar.isBlank());
  }

  private void beside(Datum.Scalar cell) {
    notes.add(
        ProblemCode.CELL_BESIDE_TABLE,
        cell.place(),
        "",
        cell.text(),
        "",
        "the cell stands apart to the right of the table, under no heading; it was not read",
        "give it a heading, or write it into the note of its row");
  }

  private static Place rowPlace(Place place) {
    return new Place(place.file(), place.line(), 0, place.cell());
  }

  /** Start of the name of a cell beyond the headings; never a key of the program. */
  static final String EXTRA = "cell beyond the headings ";
}
