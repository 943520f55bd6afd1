package spangle.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;

/** The plan is written in one order only, so that equal plans are equal files. */
final class PlanInOrder extends Rule {
  PlanInOrder() {
    super("plan-in-order", "Batches stand by line, machine and start; visits by time.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    List<PlannedBatch> batches = view.plan().batches();
    Set<String> linesDone = new HashSet<>();
    Set<String> machinesDone = new HashSet<>();
    for (int i = 0; i < batches.size(); i++) {
      PlannedBatch batch = batches.get(i);
      for (PlannedLoad load : batch.loads()) {
        checkVisits(load, findings);
      }
      if (i == 0) {
        continue;
      }
      PlannedBatch before = batches.get(i - 1);
      boolean sameLine = before.lineId().equals(batch.lineId());
      boolean sameMachine = sameLine && before.machineId().equals(batch.machineId());
      if (!sameLine) {
        linesDone.add(before.lineId());
      }
      if (!sameMachine) {
        machinesDone.add(before.machineId());
      }
      if (linesDone.contains(batch.lineId()) || machinesDone.contains(batch.machineId())) {
        findings.add(batch.id(), "does not stand with the other batches of its line and machine");
      } else if (sameMachine && batch.startMin() < before.startMin()) {
        findings.add(batch.id(), "stands behind " + before.id() + " but starts sooner");
      }
    }
  }

  private static void checkVisits(PlannedLoad load, Findings findings) {
    List<PlannedVisit> visits = load.visits();
    for (int i = 0; i < visits.size(); i++) {
      PlannedVisit visit = visits.get(i);
      if (visit.setupStartMin() > visit.startMin() || visit.startMin() > visit.endMin()) {
        findings.add(load.id(), "its visit to " + visit.stationId() + " ends before it begins");
      }
      if (i > 0 && visit.startMin() < visits.get(i - 1).startMin()) {
        findings.add(load.id(), "its visits do not stand in time order");
      }
    }
  }
}
