package spangle.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spangle.plan.LineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.StationSpec;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** Where something is reported broken, nothing is planned until it is said to work again. */
final class OutOfUse implements LogRule {
  @Override
  public String name() {
    return "out-of-use";
  }

  @Override
  public String words() {
    return "Nothing not yet begun is planned at a station while it is broken.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    Set<PlannedBatch> frozen = new HashSet<>(found.brief().frozen());
    for (Event event : found.events()) {
      if (event.kind() != EventKind.BROKEN || saidAgain(found, event)) {
        continue;
      }
      int until = until(found, event);
      for (PlannedBatch batch : found.plan().batches()) {
        boolean open = !frozen.contains(batch);
        if (open
            && batch.machineId().equals(event.station())
            && meets(batch.startMin(), batch.endMin(), event.atMin(), until)) {
          findings.add(batch.id(), "is planned in " + event.station() + " while it is broken");
        }
        for (PlannedLoad load : batch.loads()) {
          for (PlannedLoad.PlannedVisit visit : load.visits()) {
            if (open
                && visit.stationId().equals(event.station())
                && isOut(found, event, visit.place())
                && meets(visit.startMin(), visit.endMin(), event.atMin(), until)) {
              findings.add(load.id(), "is planned at " + event.station() + " while it is broken");
            }
          }
        }
      }
    }
  }

  /** All places are out, or as many as was said, counted from the last. */
  private static boolean isOut(LogAudit.Case found, Event event, int place) {
    if (event.figures().count().isEmpty()) {
      return true;
    }
    int out = event.figures().count().getAsInt();
    for (LineSpec line : found.brief().lines()) {
      for (List<StationSpec> side : List.of(line.before(), line.after())) {
        for (StationSpec station : side) {
          if (station.id().equals(event.station())) {
            return place > station.alike() - out;
          }
        }
      }
    }
    return true;
  }

  /** It was broken already: only the first report of a breakdown says how long. */
  private static boolean saidAgain(LogAudit.Case found, Event again) {
    for (Event event : found.events()) {
      if (event.number() == again.number()) {
        return false;
      }
      if (event.kind() == EventKind.BROKEN
          && event.station().equals(again.station())
          && !saidAgain(found, event)
          && until(found, event) > again.atMin()) {
        return true;
      }
    }
    return false;
  }

  private static boolean meets(int startMin, int endMin, int fromMin, int untilMin) {
    return startMin < untilMin && endMin > fromMin;
  }

  private static int until(LogAudit.Case found, Event broken) {
    int until = broken.figures().untilMin().orElse(Integer.MAX_VALUE);
    for (Event event : found.events()) {
      if (event.kind() == EventKind.REPAIRED
          && event.station().equals(broken.station())
          && event.atMin() >= broken.atMin()) {
        until = Math.min(until, event.atMin());
      }
    }
    return until;
  }
}
