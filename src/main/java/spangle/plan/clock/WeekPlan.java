package spangle.plan.clock;

/**
 * The whole week as the search sees it: per line, per machine, batches in order with their times.
 * Never changes; a move makes another that shares all it leaves alone.
 */
public final class WeekPlan {
  /** What it is a plan of. */
  public final Floor floor;

  final LinePlan[] lines;
  final long[] tally;

  /** End of every lot of a line walked whole; -1 where it has none. */
  final int[] lotEnd;

  private final long left;
  private final long weighed;
  private final long broken;

  WeekPlan(Floor floor, LinePlan[] lines, long[] tally, int[] lotEnd) {
    this.floor = floor;
    this.lines = lines;
    this.tally = tally;
    this.lotEnd = lotEnd;
    this.left = Tally.lost(tally);
    this.weighed = Tally.weighed(tally, floor.goals);
    this.broken = Tally.broken(tally);
  }

  /** The line's plan. */
  public LinePlan line(int line) {
    return lines[line];
  }

  /** One term of {@link Tally}. */
  public long term(int term) {
    return tally[term];
  }

  /** Weight of lots the clock found no time for. */
  public long left() {
    return left;
  }

  /** The weighed sum of the goals without lots left out: smaller is better. */
  public long weighed() {
    return weighed;
  }

  /** How far rules about who may be where are broken: 0 in a sound plan. */
  public long broken() {
    return broken;
  }

  /** End of a lot's last visit on a line walked whole; -1 where it has none or is not planned. */
  public int lotEnd(int lot) {
    return lotEnd.length == 0 ? -1 : lotEnd[lot];
  }

  /** All rows as plain arrays: by line, machine, place. */
  public Batch[][][] batches() {
    Batch[][][] all = new Batch[lines.length][][];
    for (int l = 0; l < lines.length; l++) {
      all[l] = new Batch[lines[l].rows.length][];
      for (int m = 0; m < all[l].length; m++) {
        all[l][m] = lines[l].rows[m].batches.clone();
      }
    }
    return all;
  }
}
