package spangle.intake.source;

import java.util.List;
import spangle.intake.problem.Place;

/**
 * Cells in rows, as a CSV file or one sheet of a spreadsheet holds them.
 *
 * @param place the file or sheet
 * @param rows rows in order; blank ones included
 */
public record Grid(Place place, List<Row> rows) {
  /**
   * One row.
   *
   * @param place where it starts
   * @param cells its cells; may be fewer than the heading has
   */
  public record Row(Place place, List<Datum.Scalar> cells) {
    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }

    /** Whether no cell says anything. */
    public boolean isBlank() {
      return cells.stream().allMatch(Datum.Scalar::isBlank);
    }
  }

  /** Copies the list. */
  public Grid {
    rows = List.copyOf(rows);
  }
}
