package spangle.audit;

import java.util.LinkedHashMap;
import java.util.Map;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** Pieces in = pieces planned + pieces left out: every lot is in one load or left out, once. */
final class EveryLotOnce extends Rule {
  EveryLotOnce() {
    super(
        "every-lot-once",
        "Every lot of the brief is in exactly one load, or left out with a reason.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    Map<String, Integer> planned = new LinkedHashMap<>();
    for (PlannedBatch batch : view.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        load.lotIds().forEach(id -> planned.merge(id, 1, Integer::sum));
      }
    }
    Map<String, Integer> left = new LinkedHashMap<>();
    for (LeftOut leftOut : view.plan().leftOut()) {
      left.merge(leftOut.lotId(), 1, Integer::sum);
      if (leftOut.code().isBlank() || leftOut.reason().isBlank()) {
        findings.add(leftOut.lotId(), "left out without a reason");
      }
      if (view.lot(leftOut.lotId()).isEmpty()) {
        findings.add(leftOut.lotId(), "left out, but the brief knows no such lot");
      }
    }
    for (Lot lot : view.brief().lots()) {
      int inLoads = planned.getOrDefault(lot.id(), 0);
      int leftOut = left.getOrDefault(lot.id(), 0);
      if (inLoads + leftOut != 1) {
        findings.add(
            lot.id(),
            Words.count(lot.pieces(), "piece", "pieces")
                + " stand in "
                + Words.count(inLoads, "load", "loads")
                + " and "
                + Words.count(leftOut, "time", "times")
                + " among those left out; exactly one of both is right");
      }
    }
  }
}
