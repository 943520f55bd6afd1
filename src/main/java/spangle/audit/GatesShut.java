package spangle.audit;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** Nothing behind a shut gate begins. */
final class GatesShut implements LogRule {
  @Override
  public String name() {
    return "gates-shut";
  }

  @Override
  public String words() {
    return "Of a part behind a shut gate nothing begins that does not hang already.";
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    Map<String, Lot> lots = new HashMap<>();
    found.brief().lots().forEach(l -> lots.put(l.id(), l));
    Set<String> fixed = Reported.fixed(found);
    found.brief().frozen().stream()
        .filter(b -> b.loads().stream().anyMatch(l -> fixed.contains(l.id())))
        .forEach(b -> b.loads().forEach(l -> fixed.add(l.id())));
    for (PlannedBatch batch : found.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (fixed.contains(load.id()) || Reported.firstMin(batch, load) < found.atMin()) {
          continue;
        }
        for (String id : load.lotIds()) {
          Lot lot = lots.get(id);
          found.parts().stream()
              .filter(p -> lot != null && p.jobId().equals(lot.jobId()))
              .filter(p -> lot != null && p.partId().equals(lot.partId()))
              .filter(p -> p.heldByGates() > 0)
              .forEach(p -> findings.add(load.id(), "has " + id + ", which a gate holds"));
        }
      }
    }
  }
}
