package spangle.plan.event;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import spangle.plan.Brief;
import spangle.plan.LoadTimes;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;

/** Stays behind the week's horizon: those of loads that hang and found no time in it. */
final class Beyond {
  private Beyond() {}

  /**
   * What found no time until now is tried again: its stays behind the horizon come back to this
   * minute, or to where it was reported since.
   */
  static PlannedBatch back(
      Brief brief, int atMin, PlannedBatch batch, Map<String, LoadState> states) {
    int first = brief.isBeyond(batch.startMin()) ? batch.startMin() : Integer.MAX_VALUE;
    OptionalInt started = OptionalInt.empty();
    OptionalInt done = OptionalInt.empty();
    for (PlannedLoad load : batch.loads()) {
      LoadState state = states.get(load.id());
      started = state == null || started.isPresent() ? started : state.startedMin();
      done = state == null || done.isPresent() ? done : state.doneMin();
      for (PlannedVisit visit : load.visits()) {
        first = brief.isBeyond(visit.startMin()) ? Math.min(first, visit.startMin()) : first;
      }
    }
    if (first == Integer.MAX_VALUE) {
      return batch;
    }
    int sooner = atMin - first;
    if (brief.isBeyond(batch.startMin()) && started.isPresent()) {
      sooner = started.getAsInt() - batch.startMin();
    } else if (done.isPresent()) {
      sooner = done.getAsInt() - LoadTimes.last(batch);
    }
    return moved(brief, batch, sooner);
  }

  /** Its stays behind the horizon, the machine's among them, moved by so much. */
  private static PlannedBatch moved(Brief brief, PlannedBatch batch, int minutes) {
    List<PlannedLoad> loads = new ArrayList<>();
    for (PlannedLoad load : batch.loads()) {
      loads.add(
          load.visiting(
              load.visits().stream()
                  .map(v -> brief.isBeyond(v.startMin()) ? v.later(minutes) : v)
                  .toList()));
    }
    return batch.later(brief.isBeyond(batch.startMin()) ? minutes : 0, loads);
  }

  /** When the last of its stays begins. */
  static int latestStart(PlannedBatch batch) {
    return batch.loads().stream()
        .flatMap(l -> l.visits().stream())
        .mapToInt(PlannedVisit::startMin)
        .reduce(batch.startMin(), Math::max);
  }
}
