package spangle.audit;

import java.util.List;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;

/**
 * A batch of the plan together with what the brief says of everything it names.
 *
 * @param batch as planned
 * @param line it runs on
 * @param machine it is in
 * @param loads its loads
 * @param frozen true when the brief holds the very same batch as started or released: it is then
 *     fact, and only what comes after it can be wrong
 */
record BatchView(
    PlannedBatch batch, LineSpec line, MachineSpec machine, List<LoadView> loads, boolean frozen) {

  /** Whether it hangs and has no time in the week: it stands behind its horizon. */
  boolean waits(int horizonMin) {
    return frozen && batch.startMin() >= horizonMin;
  }

  /** All lots in it. */
  List<Lot> lots() {
    return loads.stream().flatMap(load -> load.lots().stream()).toList();
  }

  /** Mass of the work without its carriers, kilograms. */
  double workKg() {
    return lots().stream().mapToDouble(Lot::massKg).sum();
  }

  /** Mass of the work and its carriers, kilograms. */
  double grossKg() {
    return workKg() + loads.stream().mapToDouble(load -> load.carrier().ownMassKg()).sum();
  }
}
