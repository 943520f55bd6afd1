package spangle.audit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import spangle.plan.Lot;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;
import spangle.plan.event.ScrapOf;

/** Ordered = in lots + held + not arrived + scrapped, for every part, unless it was cancelled. */
final class NoPieceLost implements LogRule {
  @Override
  public String name() {
    return "no-piece-lost";
  }

  @Override
  public String words() {
    return "Every piece ordered is in one lot, held at a gate, missing, scrapped or cancelled; none twice.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    Map<String, Integer> inLots = new HashMap<>();
    Set<String> seen = new HashSet<>();
    for (Lot lot : found.brief().lots()) {
      boolean again = lot.id().startsWith(lot.jobId() + "/" + lot.partId() + "#r");
      if (!again && lot.leg() == 0 && seen.add(lot.id())) {
        inLots.merge(key(lot.jobId(), lot.partId()), lot.pieces(), Integer::sum);
      }
    }
    for (LogAudit.PartOrder part : found.parts()) {
      int lots = inLots.getOrDefault(key(part.jobId(), part.partId()), 0);
      int scrapped = scrapped(found, part, false);
      int sum = lots + part.heldByGates() + part.notArrived() + scrapped;
      boolean cancelled = found.events().stream().anyMatch(e -> cancels(e, part));
      if (cancelled ? sum > part.ordered() : sum != part.ordered()) {
        findings.add(
            part.jobId() + "/" + part.partId(),
            part.ordered()
                + " ordered, "
                + lots
                + " in lots, "
                + part.heldByGates()
                + " held, "
                + part.notArrived()
                + " not arrived, "
                + scrapped
                + " scrapped");
      }
    }
  }

  private static String key(String job, String part) {
    return job + '\n' + part;
  }

  /** Pieces of a part that reports the plan counts say are scrapped. */
  static int scrapped(LogAudit.Case found, LogAudit.PartOrder part, boolean rejected) {
    Set<Integer> counted = new HashSet<>();
    found.brief().scrapped().forEach(s -> counted.add(s.event()));
    return found.events().stream()
        .filter(e -> e.kind() == EventKind.SCRAPPED && counted.contains(e.number()))
        .filter(e -> e.job().equals(part.jobId()) && e.part().equals(part.partId()))
        .filter(e -> ScrapOf.REJECTED.in(e) == rejected)
        .mapToInt(e -> e.figures().count().orElse(0))
        .sum();
  }

  static boolean cancels(Event event, LogAudit.PartOrder part) {
    return event.kind() == EventKind.CANCELLED
        && event.job().equals(part.jobId())
        && (event.part().isEmpty() || event.part().equals(part.partId()));
  }
}
