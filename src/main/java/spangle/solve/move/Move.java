package spangle.solve.move;

import spangle.plan.clock.Batch;

/** One way of changing a week: fills the desk's edit, or says that it found nothing to do. */
@FunctionalInterface
interface Move {
  /** Arrays of no batches, for places where batches only go. */
  Batch[] NOTHING = {};

  boolean make(Desk desk);
}
