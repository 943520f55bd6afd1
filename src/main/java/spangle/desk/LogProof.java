package spangle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.audit.LogAudit;
import spangle.intake.read.WeekReader;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.plan.Finding;
import spangle.plan.event.EventLog;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.plan.json.Replanned;

/**
 * Holds a plan made in the middle of a week against the log of its week folder and the plan before
 * it, which lies beside it.
 */
final class LogProof {
  private static final String RULE = "plan-before-it";

  private LogProof() {}

  static List<Finding> of(Path plan, PlanFile file, Path week) throws IOException {
    Replanned from = file.replanned().orElseThrow();
    Path folder = Files.isDirectory(plan) ? plan : plan.toAbsolutePath().getParent();
    Path before =
        (folder == null ? Path.of(".") : folder)
            .resolve(PlanHistory.EARLIER)
            .resolve(from.keptVersion())
            .resolve("plan.json");
    String name = "version " + from.keptVersion();
    if (!Files.isRegularFile(before) || !PlanShelf.sha256(before).equals(from.keptSha256())) {
      return List.of(
          new Finding(RULE, name, "it does not lie beside this plan as it was: " + before));
    }
    Optional<WeekInput> input = WeekReader.read(week).input();
    if (input.isEmpty()) {
      return List.of(new Finding(RULE, week.toString(), "the week folder cannot be read"));
    }
    try {
      PlanFile kept = PlanShelf.read(before);
      EventLog heard =
          new EventLog(
              input.get().events().events().stream()
                  .filter(e -> e.number() <= from.events())
                  .toList());
      ReplanStart start =
          ReplanStart.of(input.get().withEvents(heard), kept, from.atMin(), from.atMin());
      List<Finding> findings = new ArrayList<>(BriefProof.later(file, start.week()));
      if (file.version().equals(from.keptVersion())) {
        findings.add(new Finding(RULE, name, "this plan has the same letter"));
      }
      findings.addAll(
          LogAudit.of(
              new LogAudit.Case(
                  kept.brief(),
                  kept.plan(),
                  Heard.known(kept, input.get().events()),
                  input.get().events(),
                  from.events(),
                  from.atMin(),
                  file.brief(),
                  file.plan(),
                  orders(input.get(), file),
                  sheets(from, file.version()))));
      return findings;
    } catch (PlanFileException notAPlan) {
      return List.of(new Finding(RULE, name, String.valueOf(notAPlan.getMessage())));
    }
  }

  static LogAudit.Sheets sheets(Replanned from, String version) {
    Map<String, String> recalled = new HashMap<>();
    from.recalled().forEach(r -> recalled.put(r.load(), r.why()));
    return new LogAudit.Sheets(from.keptVersion(), version, recalled);
  }

  private static List<LogAudit.PartOrder> orders(WeekInput input, PlanFile file) {
    List<LogAudit.PartOrder> orders = new ArrayList<>();
    for (Job job : input.jobs()) {
      for (PartLine line : job.parts()) {
        Map<String, Integer> held = new HashMap<>();
        file.gates().stream()
            .filter(g -> !g.open())
            .filter(g -> g.jobId().equals(job.id()) && g.partId().equals(line.id()))
            .forEach(g -> held.put(g.code(), g.pieces()));
        orders.add(
            new LogAudit.PartOrder(job.id(), line.id(), line.qty(), held, input.mostCoats(line)));
      }
    }
    return orders;
  }
}
