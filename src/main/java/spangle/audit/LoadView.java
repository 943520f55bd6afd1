package spangle.audit;

import java.util.List;
import spangle.plan.CarrierSpec;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;

/**
 * A load of the plan together with what the brief says of everything it names.
 *
 * @param load as planned
 * @param batch the batch it is in
 * @param line it runs on
 * @param carrier what it hangs on
 * @param lots what hangs on it
 * @param frozen as of its batch
 */
record LoadView(
    PlannedLoad load,
    PlannedBatch batch,
    LineSpec line,
    CarrierSpec carrier,
    List<Lot> lots,
    boolean frozen) {

  String id() {
    return load.id();
  }

  /** When the first of its visits, or its batch where there are none, begins. */
  int firstMin() {
    int first = batch.startMin();
    for (PlannedVisit visit : load.visits()) {
      first = Math.min(first, visit.startMin());
    }
    return first;
  }

  /** When the last of its visits, or its batch, ends. */
  int endMin() {
    int end = batch.endMin();
    for (PlannedVisit visit : load.visits()) {
      end = Math.max(end, visit.endMin());
    }
    return end;
  }
}
