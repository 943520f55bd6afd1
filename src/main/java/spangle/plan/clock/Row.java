package spangle.plan.clock;

/** The batches of one machine in order, with their times. Never changes. */
public final class Row {
  /** Place of its machine on the line. */
  public final int machine;

  /** Number of frozen batches at its front. */
  public final int front;

  /** In order; frozen ones first. */
  final Batch[] batches;

  /** Start of each batch; below zero where the clock found no time (see {@link Loss}). */
  final int[] starts;

  /** What it comes to; of lines walked whole it stays zero. */
  final long[] tally;

  Row(int machine, int front, Batch[] batches, int[] starts, long[] tally) {
    this.machine = machine;
    this.front = front;
    this.batches = batches;
    this.starts = starts;
    this.tally = tally;
  }

  /** Number of batches. */
  public int size() {
    return batches.length;
  }

  /** The batch at that place. */
  public Batch batch(int at) {
    return batches[at];
  }

  /** Start of the batch at that place; below zero where the clock found no time. */
  public int start(int at) {
    return starts[at];
  }

  /** Whether the clock found time for the batch at that place. */
  public boolean runs(int at) {
    return starts[at] >= 0;
  }

  /** End of the batch at that place, which must run. */
  public int end(int at) {
    return starts[at] + batches[at].dwell;
  }

  /** Place of the first batch, behind the frozen ones, that starts at that minute or later. */
  public int placeAt(int minute) {
    int from = front;
    int to = starts.length;
    while (from < to) {
      int middle = (from + to) >>> 1;
      int probe = middle;
      while (probe > from && starts[probe] < 0) {
        probe--;
      }
      if (starts[probe] < minute) {
        from = middle + 1;
      } else {
        to = probe;
      }
    }
    return from;
  }
}
