package spangle.solve.move;

/** One way of changing a week: fills the desk's edit, or says that it found nothing to do. */
@FunctionalInterface
interface Move {
  /** Arrays of no batches, for places where batches only go. */
  spangle.plan.clock.Batch[] NOTHING = {};

  boolean make(Desk desk);
}
