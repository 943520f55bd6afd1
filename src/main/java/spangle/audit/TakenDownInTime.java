package spangle.audit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** What hung comes off its carrier only by a report, before any station has begun with it. */
final class TakenDownInTime implements LogRule {
  @Override
  public String name() {
    return "taken-down-in-time";
  }

  @Override
  public String words() {
    return "A load that hung leaves the plan only where it was reported taken down before a station"
        + " had begun with it; its number is void.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    Set<String> retired = new HashSet<>(found.brief().retired());
    retired.removeAll(found.keptBrief().retired());
    for (String id : found.keptBrief().retired()) {
      if (!found.brief().retired().contains(id)) {
        findings.add(id, "was taken down before and its number is no longer void");
      }
    }
    for (PlannedBatch batch : found.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (found.brief().retired().contains(load.id())) {
          findings.add(load.id(), "was taken down and stands in the plan under its old number");
        }
      }
    }
    Map<String, Lot> lots = new HashMap<>();
    found.keptBrief().lots().forEach(l -> lots.put(l.id(), l));
    for (PlannedBatch batch : found.kept().batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (retired.remove(load.id())) {
          against(found, batch, load, lots).ifPresent(why -> findings.add(load.id(), why));
        }
      }
    }
    retired.forEach(id -> findings.add(id, "is void as taken down, and no load had that number"));
  }

  private static Optional<String> against(
      LogAudit.Case found, PlannedBatch batch, PlannedLoad load, Map<String, Lot> lots) {
    Optional<Event> down = Optional.empty();
    boolean begun = false;
    int hungMin = 0;
    for (Event event : found.events()) {
      boolean counts = event.number() > found.keptKnows();
      if (!event.load().equals(load.id()) && !event.load().equals(batch.id())) {
        continue;
      }
      if (event.kind() == EventKind.TAKEN_DOWN && counts) {
        down = Optional.of(event);
      } else if (event.kind() == EventKind.STARTED || event.kind() == EventKind.DONE) {
        // What is reported of it once it is down is refused.
        begun |= down.isEmpty();
      } else if (event.kind() == EventKind.HUNG) {
        hungMin = Math.max(hungMin, event.atMin());
      }
    }
    if (down.isEmpty()) {
      return Optional.of("is void as taken down, which no report says");
    }
    boolean second =
        load.lotIds().stream()
            .map(lots::get)
            .anyMatch(lot -> lot != null && lot.after().isPresent());
    if (second) {
      return Optional.of("was taken down although the step before it had begun");
    }
    if (begun || begunWith(found, batch, load, hungMin, down.get().atMin())) {
      return Optional.of("was taken down although a station had begun with it");
    }
    return Optional.empty();
  }

  /**
   * Whether the station after the hanging had begun, so much later as it was hung later. Where that
   * station was reported broken before, nobody can say.
   */
  private static boolean begunWith(
      LogAudit.Case found, PlannedBatch batch, PlannedLoad load, int hungMin, int atMin) {
    int hung = Integer.MAX_VALUE;
    int hungBy = batch.startMin();
    for (PlannedLoad.PlannedVisit visit : load.visits()) {
      if (visit.startMin() < hung) {
        hung = visit.startMin();
        hungBy = visit.endMin();
      }
    }
    String station = batch.machineId();
    int next = batch.startMin();
    for (PlannedLoad.PlannedVisit visit : load.visits()) {
      if (visit.startMin() > hung && visit.startMin() < next) {
        next = visit.startMin();
        station = visit.stationId();
      }
    }
    String first = station;
    boolean broken =
        found.events().stream()
            .filter(e -> e.kind() == EventKind.BROKEN && e.atMin() <= atMin)
            .anyMatch(e -> e.station().equals(first));
    return !broken && next + Math.max(0, hungMin - hungBy) <= atMin;
  }
}
