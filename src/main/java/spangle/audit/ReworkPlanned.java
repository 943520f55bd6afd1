package spangle.audit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import spangle.plan.Caged;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.Scrapped;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;
import spangle.plan.event.LotNames;

/** Rejected pieces are planned once more, as many as were rejected and no more. */
final class ReworkPlanned implements LogRule {
  @Override
  public String name() {
    return "rework-planned";
  }

  @Override
  public String words() {
    return "Rejected pieces go round once more: as many as were rejected, none twice; those that bear"
        + " all the coats they may, once they are stripped.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    for (Event event : found.events()) {
      if (event.kind() != EventKind.REJECTED || fullOfCoats(found, event)) {
        continue;
      }
      String name = name(event);
      int again = again(found, event);
      int rejected = event.figures().count().orElse(0);
      boolean kept =
          again == rejected
              || (again == 0 && mayBeLeft(found, event))
              || (again < rejected && scrapped(found, event) > 0);
      if (!kept) {
        findings.add(name, rejected + " pieces were rejected, " + again + " are planned once more");
      }
    }
    found.parts().forEach(part -> stripped(found, part, findings));
  }

  private static String name(Event event) {
    return LotNames.reworkOf(event.job(), event.part(), event.number());
  }

  /** Pieces that go round again because of a report. */
  private static int again(LogAudit.Case found, Event event) {
    String name = name(event);
    return found.brief().lots().stream()
        .filter(l -> l.id().equals(name) || l.id().startsWith(name + "-"))
        .mapToInt(Lot::pieces)
        .sum();
  }

  /** Rejected pieces of its part that are scrapped. */
  private static int scrapped(LogAudit.Case found, Event event) {
    return found.parts().stream()
        .filter(p -> p.jobId().equals(event.job()) && p.partId().equals(event.part()))
        .mapToInt(p -> NoPieceLost.scrapped(found, p, true))
        .sum();
  }

  private static boolean fullOfCoats(LogAudit.Case found, Event event) {
    int coats = event.figures().coats().orElse(1);
    return found.parts().stream()
        .anyMatch(
            p ->
                p.jobId().equals(event.job())
                    && p.partId().equals(event.part())
                    && coats >= p.mostCoats());
  }

  /** Pieces that bear all they may wait to be stripped, or are bare and planned again. */
  private static void stripped(LogAudit.Case found, LogAudit.PartOrder part, Findings findings) {
    // A report that may be left counts whole or not at all.
    Set<Integer> full = new TreeSet<>(Set.of(0));
    int again = 0;
    int scrapped = NoPieceLost.scrapped(found, part, true);
    for (Event event : found.events()) {
      if (!event.job().equals(part.jobId()) || !event.part().equals(part.partId())) {
        continue;
      }
      if (event.kind() == EventKind.REJECTED && fullOfCoats(found, event)) {
        full = with(full, event.figures().count().orElse(0), mayBeLeft(found, event));
      } else if (event.kind() == EventKind.REJECTED && scrapped > 0) {
        int less = event.figures().count().orElse(0) - again(found, event);
        full = with(full, Math.max(0, less), mayBeLeft(found, event));
      } else if (event.kind() == EventKind.STRIPPED) {
        again += bare(found, part, event.number());
      }
    }
    boolean cancelled = found.events().stream().anyMatch(e -> NoPieceLost.cancels(e, part));
    if (!cancelled) {
      caged(found, part, findings);
    }
    if (!cancelled && !full.contains(again + part.heldToStrip() + scrapped)) {
      findings.add(
          part.jobId() + "/" + part.partId(),
          full.stream().map(String::valueOf).collect(Collectors.joining(" or "))
              + " rejected pieces bear all the coats they may, "
              + part.heldToStrip()
              + " wait to be stripped, "
              + again
              + " are planned again"
              + (scrapped == 0 ? "" : ", " + scrapped + " are scrapped"));
    }
  }

  /** Rejected pieces that wait for somebody are good in no kit. */
  private static void caged(LogAudit.Case found, LogAudit.PartOrder part, Findings findings) {
    int caged =
        found.brief().caged().stream()
            .filter(c -> c.jobId().equals(part.jobId()) && c.partId().equals(part.partId()))
            .mapToInt(Caged::pieces)
            .sum();
    if (caged != part.heldInCage()) {
      findings.add(
          part.jobId() + "/" + part.partId(),
          part.heldInCage()
              + " rejected pieces wait to be stripped or for a gate, "
              + caged
              + " are kept out of the kits");
    }
  }

  private static Set<Integer> with(Set<Integer> sums, int pieces, boolean perhaps) {
    Set<Integer> more = new TreeSet<>(perhaps ? sums : Set.of());
    sums.forEach(sum -> more.add(sum + pieces));
    return more;
  }

  private static int bare(LogAudit.Case found, LogAudit.PartOrder part, int event) {
    String name = LotNames.reworkOf(part.jobId(), part.partId(), event);
    return found.brief().lots().stream()
        .filter(l -> l.leg() == 0)
        .filter(l -> l.id().equals(name) || l.id().matches("\\Q" + name + "\\E[-.].*"))
        .mapToInt(Lot::pieces)
        .sum();
  }

  /** Held at a gate, cancelled since, or rejected although not so many were surely finished. */
  static boolean mayBeLeft(LogAudit.Case found, Event event) {
    boolean held =
        found.parts().stream()
            .anyMatch(
                p ->
                    p.jobId().equals(event.job())
                        && p.partId().equals(event.part())
                        && (p.held().keySet().stream()
                                .anyMatch(g -> g.startsWith("rework-") && !Scrapped.gate(g))
                            || found.events().stream().anyMatch(e -> NoPieceLost.cancels(e, p))));
    return held || finishedAtLeast(found, event) < event.figures().count().orElse(0);
  }

  /**
   * Pieces of the part with the coats the report names in loads that are surely finished, less all
   * others of them rejected. Where something was broken nothing is sure: what was inside waits for
   * an inspection.
   */
  private static int finishedAtLeast(LogAudit.Case found, Event rejection) {
    if (found.events().stream().anyMatch(e -> e.kind() == EventKind.BROKEN)) {
      return 0;
    }
    Map<String, Lot> lots = new HashMap<>();
    found.keptBrief().lots().forEach(l -> lots.put(l.id(), l));
    Set<String> chained = new HashSet<>();
    int finished = 0;
    for (PlannedBatch batch : found.kept().batches()) {
      for (PlannedLoad load : batch.loads()) {
        for (String id : load.lotIds()) {
          Lot lot = lots.get(id);
          if (lot != null
              && lot.lastLeg()
              && lot.leg() == 0
              && chained.add(id)
              && lot.jobId().equals(rejection.job())
              && lot.partId().equals(rejection.part())
              && coats(found, lot) == coats(rejection)
              && finished(found, batch, load)) {
            finished += lot.pieces();
          }
        }
      }
    }
    for (Event other : found.events()) {
      if (other.kind() == EventKind.REJECTED
          && other.number() != rejection.number()
          && coats(other) == coats(rejection)
          && other.job().equals(rejection.job())
          && other.part().equals(rejection.part())) {
        finished -= other.figures().count().orElse(0);
      }
    }
    return finished;
  }

  private static int coats(Event rejection) {
    return rejection.figures().coats().orElse(1);
  }

  /** Coats of the last colour a lot bears when it is finished; zinc goes on bare steel. */
  private static int coats(LogAudit.Case found, Lot lot) {
    if (lot.finish().kind() == FinishKind.ZINC) {
      return 1;
    }
    return found.events().stream()
        .filter(e -> e.kind() == EventKind.REJECTED)
        .filter(e -> ofEvent(lot, LotNames.reworkOf(lot.jobId(), lot.partId(), e.number())))
        .mapToInt(e -> coats(e) + 1)
        .findFirst()
        .orElse(1);
  }

  private static boolean ofEvent(Lot lot, String name) {
    return lot.id().equals(name)
        || lot.id().startsWith(name + "-")
        || lot.id().startsWith(name + ".");
  }

  private static boolean finished(LogAudit.Case found, PlannedBatch batch, PlannedLoad load) {
    int last = batch.endMin();
    for (PlannedLoad.PlannedVisit visit : load.visits()) {
      last = Math.max(last, visit.endMin());
    }
    boolean before =
        found.keptBrief().frozen().stream()
            .anyMatch(b -> b.loads().stream().anyMatch(l -> l.id().equals(load.id())));
    for (Event event : found.events()) {
      boolean counts = before || event.number() > found.keptKnows();
      boolean named = event.load().equals(load.id()) || event.load().equals(batch.id());
      if (counts
          && ((event.kind() == EventKind.DONE && named)
              || (event.kind() == EventKind.AS_PLANNED && last <= event.atMin()))) {
        return true;
      }
    }
    return false;
  }
}
