package spangle.audit;

import java.util.HashSet;
import java.util.Set;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** Loads that hang or have gone further, read from the log and the plan it speaks of alone. */
final class Reported {
  private Reported() {}

  static Set<String> fixed(LogAudit.Case found) {
    Set<String> before = new HashSet<>();
    found.keptBrief().frozen().forEach(b -> b.loads().forEach(l -> before.add(l.id())));
    Set<String> fixed = new HashSet<>();
    boolean anyBroken = found.events().stream().anyMatch(e -> e.kind() == EventKind.BROKEN);
    for (Event event : found.events()) {
      boolean ofBefore = event.number() <= found.keptKnows();
      for (PlannedBatch batch : found.kept().batches()) {
        for (PlannedLoad load : batch.loads()) {
          if ((!ofBefore || before.contains(load.id())) && says(event, batch, load, anyBroken)) {
            fixed.add(load.id());
          }
        }
      }
    }
    return fixed;
  }

  /** Where something was broken, "as planned" does not say for certain what hangs. */
  private static boolean says(
      Event event, PlannedBatch batch, PlannedLoad load, boolean anyBroken) {
    boolean named = event.load().equals(load.id()) || event.load().equals(batch.id());
    return switch (event.kind()) {
      case HUNG, STARTED, DONE -> named;
      case AS_PLANNED -> !anyBroken && firstMin(batch, load) < event.atMin();
      default -> false;
    };
  }

  static int firstMin(PlannedBatch batch, PlannedLoad load) {
    int first = batch.startMin();
    for (PlannedLoad.PlannedVisit visit : load.visits()) {
      first = Math.min(first, visit.startMin());
    }
    return first;
  }
}
