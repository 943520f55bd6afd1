package spangle.audit;

import java.util.HashMap;
import java.util.Map;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** No piece is coated over more often than it may be, none beside pieces of first quality. */
final class CoatsCounted implements LogRule {
  private static final String REWORK = "#r";

  @Override
  public String name() {
    return "coats-counted";
  }

  @Override
  public String words() {
    return "No rejected piece gets more coats than its product may bear, and no load mixes rejected"
        + " pieces with others, as the gun is set otherwise for them.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    Map<Integer, Event> rejections = new HashMap<>();
    for (Event event : found.events()) {
      if (event.kind() == EventKind.REJECTED) {
        rejections.put(event.number(), event);
      }
    }
    Map<String, Boolean> over = new HashMap<>();
    for (Lot lot : found.brief().lots()) {
      Event rejection = rejections.get(event(lot));
      over.put(lot.id(), rejection != null);
      if (rejection != null) {
        count(found, lot, rejection.figures().coats().orElse(1) + 1, findings);
      }
    }
    for (PlannedBatch batch : found.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        long again = load.lotIds().stream().filter(id -> over.getOrDefault(id, false)).count();
        if (again > 0 && again < load.lotIds().size()) {
          findings.add(load.id(), "rejected pieces hang beside others");
        }
      }
    }
  }

  private static void count(LogAudit.Case found, Lot lot, int coats, Findings findings) {
    found.parts().stream()
        .filter(p -> p.jobId().equals(lot.jobId()) && p.partId().equals(lot.partId()))
        .filter(p -> coats > p.mostCoats())
        .forEach(
            p ->
                findings.add(
                    lot.id(),
                    "would get coat " + coats + " of at most " + p.mostCoats() + "; strip it"));
  }

  /** Number of the event a lot goes round again for; 0 for a lot of the order. */
  private static int event(Lot lot) {
    String start = lot.jobId() + "/" + lot.partId() + REWORK;
    if (!lot.id().startsWith(start)) {
      return 0;
    }
    String digits = lot.id().substring(start.length()).split("[-.]", 2)[0];
    return digits.matches("[0-9]{1,8}") ? Integer.parseInt(digits) : 0;
  }
}
