package spangle.solve.move;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import spangle.plan.clock.Batch;

/**
 * The batches one move changes, each at its place in the plan, written into the edit in the order
 * of their places. Scratch; not for two threads.
 */
final class Spots {
  private int[] row = new int[16];
  private int[] at = new int[16];
  private int[] gone = new int[16];
  private @Nullable Batch[] now = new @Nullable Batch[16];
  private int count;

  void clear() {
    count = 0;
  }

  /** The spot of that place, or -1 where nothing has changed yet. */
  int find(int inRow, int place) {
    for (int s = 0; s < count; s++) {
      if (row[s] == inRow && at[s] == place && gone[s] == 1) {
        return s;
      }
    }
    return -1;
  }

  /** What stands at a spot; null where its batch has gone. */
  @Nullable Batch now(int spot) {
    return now[spot];
  }

  /** A batch at that place from now on, or none. */
  void put(int inRow, int place, @Nullable Batch batch) {
    int s = find(inRow, place);
    if (s < 0) {
      s = add(inRow, place);
      gone[s] = 1;
    }
    now[s] = batch;
  }

  /** A batch comes at that gap, ahead of the batch of that place. */
  void insert(int inRow, int gap, Batch comes) {
    int s = add(inRow, gap);
    gone[s] = 0;
    now[s] = comes;
  }

  /** Writes them all. */
  void write(Desk desk) {
    for (int k = 1; k < count; k++) {
      for (int s = k; s > 0 && before(s, s - 1); s--) {
        swap(s, s - 1);
      }
    }
    for (int s = 0; s < count; s++) {
      Batch batch = now[s];
      if (batch == null) {
        desk.edit.put(row[s], at[s], gone[s], Move.NOTHING);
      } else {
        desk.edit.put(row[s], at[s], gone[s], batch);
      }
    }
  }

  private int add(int inRow, int place) {
    int s = count++;
    if (s == row.length) {
      row = Arrays.copyOf(row, 2 * s);
      at = Arrays.copyOf(at, 2 * s);
      gone = Arrays.copyOf(gone, 2 * s);
      now = Arrays.copyOf(now, 2 * s);
    }
    row[s] = inRow;
    at[s] = place;
    return s;
  }

  private boolean before(int a, int b) {
    return row[a] != row[b] ? row[a] < row[b] : at[a] != at[b] ? at[a] < at[b] : gone[a] < gone[b];
  }

  private void swap(int a, int b) {
    int place = row[a];
    row[a] = row[b];
    row[b] = place;
    place = at[a];
    at[a] = at[b];
    at[b] = place;
    place = gone[a];
    gone[a] = gone[b];
    gone[b] = place;
    Batch batch = now[a];
    now[a] = now[b];
    now[b] = batch;
  }
}
