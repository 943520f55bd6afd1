package spangle.plan.clock;

import java.util.Arrays;

/**
 * What a move wants of the rows of one line. Used again and again; not for two threads. Operations
 * on one row are given in ascending order of place.
 */
public final class WeekEdit {
  int line;
  int rows;
  RowEdit[] edits = {new RowEdit(), new RowEdit(), new RowEdit(), new RowEdit()};

  /** Begins anew. */
  public void reset(int ofLine) {
    line = ofLine;
    rows = 0;
  }

  /** Whether nothing is asked for. */
  public boolean isEmpty() {
    return rows == 0;
  }

  /** The line whose rows change. */
  public int line() {
    return line;
  }

  /** At that place of that row {@code goes} batches go and these come. */
  public void put(int row, int place, int goes, Batch... comes) {
    edit(row).put(place, goes, comes);
  }

  /** The same with the first {@code count} of an array. */
  public void put(int row, int place, int goes, Batch[] comes, int count) {
    edit(row).put(place, goes, comes, count);
  }

  private RowEdit edit(int row) {
    for (int k = 0; k < rows; k++) {
      if (edits[k].row == row) {
        return edits[k];
      }
    }
    if (rows == edits.length) {
      edits = Arrays.copyOf(edits, 2 * rows);
      for (int k = rows; k < edits.length; k++) {
        edits[k] = new RowEdit();
      }
    }
    edits[rows].reset(row);
    return edits[rows++];
  }
}
