package spangle.audit;

import java.util.HashMap;
import java.util.Map;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** Rejected pieces are planned once more, as many as were rejected and no more. */
final class ReworkPlanned implements LogRule {
  @Override
  public String name() {
    return "rework-planned";
  }

  @Override
  public String words() {
    return "Rejected pieces go round once more: as many as were rejected, none twice.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    for (Event event : found.events()) {
      if (event.kind() != EventKind.REJECTED) {
        continue;
      }
      String name = event.job() + "/" + event.part() + "#r" + event.number();
      int again =
          found.brief().lots().stream()
              .filter(l -> l.id().equals(name) || l.id().startsWith(name + "-"))
              .mapToInt(Lot::pieces)
              .sum();
      int rejected = event.figures().count().orElse(0);
      boolean kept = again == rejected || (again == 0 && mayBeLeft(found, event));
      if (!kept) {
        findings.add(name, rejected + " pieces were rejected, " + again + " are planned once more");
      }
    }
  }

  /** Held at a gate, cancelled since, or rejected although not so many were finished. */
  private static boolean mayBeLeft(LogAudit.Case found, Event event) {
    boolean held =
        found.parts().stream()
            .anyMatch(
                p ->
                    p.jobId().equals(event.job())
                        && p.partId().equals(event.part())
                        && (p.held().keySet().stream().anyMatch(g -> g.startsWith("rework-"))
                            || found.events().stream().anyMatch(e -> NoPieceLost.cancels(e, p))));
    return held || finishedAtMost(found, event) < event.figures().count().orElse(0);
  }

  /** Pieces of the part in loads reported finished, less those rejected before. */
  private static int finishedAtMost(LogAudit.Case found, Event rejection) {
    Map<String, Lot> lots = new HashMap<>();
    found.keptBrief().lots().forEach(l -> lots.put(l.id(), l));
    int finished = 0;
    for (PlannedBatch batch : found.kept().batches()) {
      for (PlannedLoad load : batch.loads()) {
        boolean done =
            found.events().stream()
                .anyMatch(
                    e ->
                        e.kind() == EventKind.AS_PLANNED
                            || (e.kind() == EventKind.DONE
                                && (e.load().equals(load.id()) || e.load().equals(batch.id()))));
        for (String id : load.lotIds()) {
          Lot lot = lots.get(id);
          if (done
              && lot != null
              && lot.lastLeg()
              && lot.jobId().equals(rejection.job())
              && lot.partId().equals(rejection.part())) {
            finished += lot.pieces();
          }
        }
      }
    }
    for (Event earlier : found.events()) {
      if (earlier.kind() == EventKind.REJECTED
          && earlier.number() != rejection.number()
          && earlier.job().equals(rejection.job())
          && earlier.part().equals(rejection.part())) {
        finished -= earlier.figures().count().orElse(0);
      }
    }
    return finished;
  }
}
