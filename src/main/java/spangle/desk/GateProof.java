package spangle.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.plan.Finding;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.Scrapped;
import spangle.plan.json.PlanFile;

/**
 * Asks every gate again of the week folder as it is now, whatever the plan says of them, and names
 * each load that carries a part behind a shut one: also where a file has changed since the plan was
 * made, for then nobody has asked yet.
 */
final class GateProof {
  private static final String RULE = "gates-shut";

  private GateProof() {}

  /** Loads with a part behind a shut gate; empty where the folder can no longer be read. */
  static List<Finding> of(PlanFile file, Path week, Optional<Path> overlay) {
    Optional<PreparedWeek> now =
        WeekReader.read(week, Besides.overlay(overlay)).input().map(BriefMaker::prepare);
    return now.map(given -> loads(file, shut(given))).orElse(List.of());
  }

  /** What shuts each part; what has only not come yet, or goes round again, is behind no gate. */
  private static Map<String, List<Held>> shut(PreparedWeek given) {
    Map<String, List<Held>> shut = new LinkedHashMap<>();
    for (Held held : given.held()) {
      if (!held.gate().equals(Held.NOT_ARRIVED)
          && !held.gate().equals(Scrapped.GATE)
          && !held.gate().startsWith("rework-")) {
        shut.computeIfAbsent(WeekIndex.key(held.jobId(), held.partId()), k -> new ArrayList<>())
            .add(held);
      }
    }
    return shut;
  }

  private static List<Finding> loads(PlanFile file, Map<String, List<Held>> shut) {
    Map<String, Lot> lots = new LinkedHashMap<>();
    file.brief().lots().forEach(lot -> lots.put(lot.id(), lot));
    List<Finding> findings = new ArrayList<>();
    for (PlannedBatch batch : file.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        for (String id : load.lotIds()) {
          Optional.ofNullable(lots.get(id))
              .map(lot -> shut.get(WeekIndex.key(lot.jobId(), lot.partId())))
              .ifPresent(gates -> gates.forEach(g -> findings.add(finding(load.id(), g))));
        }
      }
    }
    return findings;
  }

  private static Finding finding(String load, Held held) {
    return new Finding(
        RULE,
        load,
        "carries "
            + held.jobId()
            + "/"
            + held.partId()
            + ", which waits behind a shut gate, "
            + held.gate()
            + ": "
            + held.words());
  }
}
