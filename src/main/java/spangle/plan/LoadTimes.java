package spangle.plan;

/** First and last minute of a load, its batch among its stays. */
public final class LoadTimes {
  private LoadTimes() {}

  /** When its first stay begins. */
  public static int first(PlannedBatch batch, PlannedLoad load) {
    int first = batch.startMin();
    for (PlannedLoad.PlannedVisit visit : load.visits()) {
      first = Math.min(first, visit.startMin());
    }
    return first;
  }

  /** When its last stay ends. */
  public static int last(PlannedBatch batch, PlannedLoad load) {
    int last = batch.endMin();
    for (PlannedLoad.PlannedVisit visit : load.visits()) {
      last = Math.max(last, visit.endMin());
    }
    return last;
  }

  /** When the first stay of any of its loads begins. */
  public static int first(PlannedBatch batch) {
    return batch.loads().stream().mapToInt(l -> first(batch, l)).min().orElse(batch.startMin());
  }

  /** When the last stay of any of its loads ends. */
  public static int last(PlannedBatch batch) {
    return batch.loads().stream().mapToInt(l -> last(batch, l)).max().orElse(batch.endMin());
  }
}
