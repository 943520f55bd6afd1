package spangle.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** First and last minute of a load, its batch among its stays, and the end of each lot on it. */
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

  /** When the last stay of each lot ends, by lot; of a lot in two batches, as the later says. */
  public static Map<String, Integer> lotEnds(List<PlannedBatch> batches) {
    Map<String, Integer> ends = new HashMap<>();
    for (PlannedBatch batch : batches) {
      for (PlannedLoad load : batch.loads()) {
        int last = last(batch, load);
        load.lotIds().forEach(id -> ends.put(id, last));
      }
    }
    return ends;
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
