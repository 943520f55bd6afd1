package spangle.plan.clock;

/** The rows of one line and, where the line is walked whole, each batch's way through it. */
public final class LinePlan {
  /** The line's place in {@link Floor#lines}. */
  public final int line;

  /** By machine. */
  final Row[] rows;

  /** What the line comes to. */
  final long[] tally;

  /** In the order fed; empty for lines whose rows are timed alone. */
  final Passage[] feed;

  /** What lines walked before had drawn of each supply. */
  final double[] drawnBefore;

  private final int movable;

  LinePlan(int line, Row[] rows, long[] tally, Passage[] feed, double[] drawnBefore) {
    this.line = line;
    this.rows = rows;
    this.tally = tally;
    this.feed = feed;
    this.drawnBefore = drawnBefore;
    int sum = 0;
    for (Row row : rows) {
      sum += row.batches.length - row.front;
    }
    this.movable = sum;
  }

  /** Batches that are not frozen. */
  public int movable() {
    return movable;
  }

  /** Number of rows. */
  public int size() {
    return rows.length;
  }

  /** The row of that machine. */
  public Row row(int machine) {
    return rows[machine];
  }

  /** Batches in the order fed; none for lines whose rows are timed alone. */
  public int fed() {
    return feed.length;
  }

  /** The batch fed at that place. */
  public Passage passage(int place) {
    return feed[place];
  }

  double[] drawnAfter() {
    return feed.length == 0 ? drawnBefore : feed[feed.length - 1].drawn;
  }
}
