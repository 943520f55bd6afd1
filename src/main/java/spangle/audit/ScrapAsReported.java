package spangle.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.Scrapped;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;
import spangle.plan.event.LotNames;
import spangle.plan.event.ScrapOf;

/** Pieces are scrapped because the log says so, and every such report counts that can. */
final class ScrapAsReported implements LogRule {
  @Override
  public String name() {
    return "scrap-as-reported";
  }

  @Override
  public String words() {
    return "As many pieces are scrapped as were reported, neither more nor fewer; a report counts"
        + " wherever so many surely wait.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    List<Event> reports =
        found.events().stream().filter(e -> e.kind() == EventKind.SCRAPPED).toList();
    Set<Integer> counted = new HashSet<>();
    for (Scrapped each : found.brief().scrapped()) {
      if (reports.stream().noneMatch(e -> says(e, each)) || !counted.add(each.event())) {
        findings.add(
            each.jobId() + "/" + each.partId(),
            each.pieces() + " pieces are scrapped, which no report says");
      }
    }
    for (Event report : reports) {
      int pieces = report.figures().count().orElse(0);
      if (!counted.contains(report.number()) && sure(found, report) >= pieces) {
        findings.add(
            report.job() + "/" + report.part(),
            pieces + " pieces were reported scrapped and are not");
      }
    }
  }

  private static boolean says(Event report, Scrapped scrapped) {
    return report.number() == scrapped.event()
        && report.job().equals(scrapped.jobId())
        && report.part().equals(scrapped.partId())
        && report.figures().count().orElse(0) == scrapped.pieces()
        && (scrapped.rejected() ? ScrapOf.REJECTED : ScrapOf.WAITING).in(report);
  }

  /** Pieces that surely waited when it was made, other reports of scrap taken off. */
  private static int sure(LogAudit.Case found, Event report) {
    Set<String> untouched = untouched(found);
    boolean rejected = ScrapOf.REJECTED.in(report);
    int pieces = rejected ? surelyRejected(found, report) : 0;
    Set<String> seen = new HashSet<>();
    Set<String> chains = new HashSet<>();
    for (Lot lot : found.keptBrief().lots()) {
      if (lot.jobId().equals(report.job())
          && lot.partId().equals(report.part())
          && LotNames.rework(lot) == rejected) {
        seen.add(lot.id());
        boolean hangs = !untouched.contains(lot.id());
        if (rejected) {
          pieces -= hangs && lot.leg() == 0 ? lot.pieces() : 0;
        } else if (lot.leg() == 0) {
          pieces += lot.pieces();
        }
        if (hangs) {
          chains.add(LotNames.chain(lot));
        }
      }
    }
    for (Lot lot : found.keptBrief().lots()) {
      boolean own = seen.contains(lot.id()) && lot.leg() == 0 && !rejected;
      pieces -= own && chains.contains(LotNames.chain(lot)) ? lot.pieces() : 0;
    }
    for (Event other : found.events()) {
      boolean known =
          found.keptBrief().scrapped().stream().anyMatch(s -> s.event() == other.number());
      if (other.kind() == EventKind.SCRAPPED
          && other.number() != report.number()
          && other.job().equals(report.job())
          && other.part().equals(report.part())
          && other.of().equals(report.of())
          && (rejected || !known)) {
        pieces -= other.figures().count().orElse(0);
      }
    }
    return pieces;
  }

  /** Where any report of it may have been refused, or it was cancelled, nothing is sure. */
  private static int surelyRejected(LogAudit.Case found, Event report) {
    int pieces = 0;
    for (Event event : found.events()) {
      boolean own = event.job().equals(report.job()) && event.part().equals(report.part());
      if (own && event.kind() == EventKind.REJECTED && !ReworkPlanned.mayBeLeft(found, event)) {
        boolean before = event.atMin() <= report.atMin() && event.number() < report.number();
        pieces += before ? event.figures().count().orElse(0) : 0;
      }
    }
    return pieces;
  }

  /** Lots of the plan before on loads of which no report can say that they hang, or on none. */
  private static Set<String> untouched(LogAudit.Case found) {
    Set<String> touched = new HashSet<>();
    for (PlannedBatch batch : found.kept().batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (found.events().stream().anyMatch(e -> mayHang(e, batch, load))
            || found.keptBrief().frozen().stream().anyMatch(b -> b.id().equals(batch.id()))) {
          touched.addAll(load.lotIds());
        }
      }
    }
    Set<String> untouched = new HashSet<>();
    found.keptBrief().lots().stream()
        .map(Lot::id)
        .filter(id -> !touched.contains(id))
        .forEach(untouched::add);
    return untouched;
  }

  private static boolean mayHang(Event event, PlannedBatch batch, PlannedLoad load) {
    boolean named = event.load().equals(load.id()) || event.load().equals(batch.id());
    return switch (event.kind()) {
      case HUNG, STARTED, DONE -> named;
      case AS_PLANNED -> Reported.firstMin(batch, load) < event.atMin();
      default -> false;
    };
  }
}
