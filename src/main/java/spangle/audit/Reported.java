package spangle.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/**
 * Loads that surely hang or have gone further, read from the log and the plan it speaks of alone.
 * What cannot be, such as two loads on one numbered carrier, is not sure.
 */
final class Reported {
  private final LogAudit.Case found;
  private final Set<String> before = new HashSet<>();
  private final Set<String> fixed = new HashSet<>();
  private final Map<String, String> onCarrier = new HashMap<>();
  private final List<Place> places = new ArrayList<>();

  private record Place(PlannedBatch batch, PlannedLoad load) {
    int first() {
      return firstMin(batch, load);
    }

    int last() {
      int last = batch.endMin();
      for (PlannedLoad.PlannedVisit visit : load.visits()) {
        last = Math.max(last, visit.endMin());
      }
      return last;
    }

    String carrier() {
      return load.carrierNumber() > 0
          ? load.carrierId() + " " + load.carrierNumber()
          : "load " + load.id();
    }
  }

  private Reported(LogAudit.Case found) {
    this.found = found;
    found.keptBrief().frozen().forEach(b -> b.loads().forEach(l -> before.add(l.id())));
    for (PlannedBatch batch : found.kept().batches()) {
      batch.loads().forEach(load -> places.add(new Place(batch, load)));
    }
    places.sort(Comparator.comparingInt(Place::first));
  }

  static Set<String> fixed(LogAudit.Case found) {
    return new Reported(found).read();
  }

  private Set<String> read() {
    boolean anyBroken = found.events().stream().anyMatch(e -> e.kind() == EventKind.BROKEN);
    for (Event event : found.events()) {
      for (Place place : places) {
        if (event.number() > found.keptKnows() || before.contains(place.load().id())) {
          read(event, place, anyBroken);
        }
      }
    }
    return fixed;
  }

  /** Where something was broken, "as planned" does not say for certain what hangs. */
  private void read(Event event, Place place, boolean anyBroken) {
    String id = place.load().id();
    if (found.brief().retired().contains(id)) {
      return;
    }
    boolean named = event.load().equals(id) || event.load().equals(place.batch().id());
    boolean planned =
        event.kind() == EventKind.AS_PLANNED && !anyBroken && place.first() < event.atMin();
    boolean hangs =
        planned
            || (named
                && (event.kind() == EventKind.HUNG
                    || event.kind() == EventKind.STARTED
                    || event.kind() == EventKind.DONE));
    if (!hangs) {
      return;
    }
    boolean off = event.kind() == EventKind.DONE || (planned && place.last() <= event.atMin());
    String other = onCarrier.getOrDefault(place.carrier(), id);
    boolean sure = other.equals(id) && !mayCarryAnother(event, place);
    if (sure || event.kind() == EventKind.DONE) {
      fixed.add(id);
      if (off) {
        onCarrier.remove(place.carrier(), id);
      } else {
        onCarrier.put(place.carrier(), id);
      }
    }
  }

  /** An earlier "as planned" may have left another load on the same carrier. */
  private boolean mayCarryAnother(Event event, Place place) {
    for (Event earlier : found.events()) {
      if (earlier.number() == event.number()) {
        return false;
      }
      if (earlier.kind() == EventKind.AS_PLANNED) {
        for (Place other : places) {
          if (!other.load().id().equals(place.load().id())
              && other.carrier().equals(place.carrier())
              && other.first() < earlier.atMin()
              && other.last() > earlier.atMin()) {
            return true;
          }
        }
      }
    }
    return false;
  }

  static int firstMin(PlannedBatch batch, PlannedLoad load) {
    int first = batch.startMin();
    for (PlannedLoad.PlannedVisit visit : load.visits()) {
      first = Math.min(first, visit.startMin());
    }
    return first;
  }
}
