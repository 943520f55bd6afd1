package spangle.audit;

import spangle.plan.Lot;

/** Powder, wet paint and degassing never meet in an oven. */
final class OneKindOfWork extends Rule {
  OneKindOfWork() {
    super(
        "one-kind-of-work",
        "Only one kind of work is in an oven at a time: powder, wet paint and degassing never meet.",
        "The dwell windows of a batch meet and its kinds of work may");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (BatchView batch : view.openBatches()) {
      String first = batch.lots().get(0).batchGroup();
      for (Lot lot : batch.lots()) {
        if (!lot.batchGroup().equals(first)) {
          findings.add(
              batch.batch().id(),
              "holds " + first + " together with " + lot.batchGroup() + " (" + lot.id() + ")");
          break;
        }
      }
    }
  }
}
