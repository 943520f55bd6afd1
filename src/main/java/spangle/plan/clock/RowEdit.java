package spangle.plan.clock;

import java.util.Arrays;

/**
 * What a move wants of one row: at some places so many batches go and others come. Used again and
 * again; not for two threads.
 */
public final class RowEdit {
  int row;
  int ops;
  int[] at = new int[8];
  int[] gone = new int[8];

  /** Where the batches that come with an operation begin in {@link #come}; one more than ops. */
  int[] from = new int[9];

  Batch[] come = new Batch[16];

  void reset(int toRow) {
    row = toRow;
    ops = 0;
    from[0] = 0;
  }

  /**
   * At that place {@code goes} batches go and these come. Operations of one row are given in
   * ascending order and do not overlap.
   */
  void put(int place, int goes, Batch... comes) {
    put(place, goes, comes, comes.length);
  }

  void put(int place, int goes, Batch[] comes, int count) {
    if (ops > 0 && place < at[ops - 1] + gone[ops - 1]) {
      throw new IllegalArgumentException("operations overlap or are out of order");
    }
    if (ops == at.length) {
      at = Arrays.copyOf(at, 2 * ops);
      gone = Arrays.copyOf(gone, 2 * ops);
      from = Arrays.copyOf(from, 2 * ops + 1);
    }
    at[ops] = place;
    gone[ops] = goes;
    int start = from[ops];
    if (start + count > come.length) {
      come = Arrays.copyOf(come, 2 * (start + count));
    }
    System.arraycopy(comes, 0, come, start, count);
    ops++;
    from[ops] = start + count;
  }

  int growth() {
    int sum = from[ops];
    for (int k = 0; k < ops; k++) {
      sum -= gone[k];
    }
    return sum;
  }

  /** The edited row of batches. */
  Batch[] applied(Row old) {
    Batch[] batches = new Batch[old.batches.length + growth()];
    int read = 0;
    int write = 0;
    for (int k = 0; k < ops; k++) {
      int kept = at[k] - read;
      System.arraycopy(old.batches, read, batches, write, kept);
      write += kept;
      int comes = from[k + 1] - from[k];
      System.arraycopy(come, from[k], batches, write, comes);
      write += comes;
      read = at[k] + gone[k];
    }
    System.arraycopy(old.batches, read, batches, write, old.batches.length - read);
    return batches;
  }
}
