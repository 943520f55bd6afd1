package spangle.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.PlanShelf;
import spangle.plan.Finding;
import spangle.report.week.Say;

/** Independent proof that a plan keeps every rule. */
@Command(
    name = "audit",
    mixinStandardHelpOptions = true,
    description = "Proves a plan against its brief with a clock of its own, or says what is wrong.",
    footer = {"", "Example:", "  spangle audit samples/harbour-week/plan/plan.json"})
final class AuditCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "PLAN", description = "plan.json or its folder.")
  @SuppressWarnings("NullAway.Init")
  private Path plan;

  @Option(
      names = "--week",
      paramLabel = "WEEK",
      description = "The week folder; without it the one the plan names.")
  private @Nullable Path week;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    PlanShelf.Audited audited = audited();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      json(audited).print(out);
    } else {
      words(audited, out);
    }
    boolean quiet = audited.findings().isEmpty() && audited.changed().isEmpty();
    return quiet ? ExitCode.DONE : ExitCode.WAITS;
  }

  private PlanShelf.Audited audited() {
    if (week != null && !Files.isDirectory(week)) {
      throw ExitException.refused(week + " is no folder; give the week folder of the plan");
    }
    return PlanReading.of(
        plan,
        () ->
            PlanShelf.audit(
                plan, week != null ? week : PlanShelf.weekOf(plan, PlanShelf.read(plan))));
  }

  private static void words(PlanShelf.Audited audited, PrintWriter out) {
    for (Finding finding : audited.findings()) {
      out.printf(Locale.ROOT, "%s: %s [%s]%n", finding.subject(), finding.words(), finding.rule());
    }
    audited.changed().forEach(out::println);
    out.printf(
        Locale.ROOT,
        "%s, %s, %d left out: %s%n",
        Say.count(audited.file().brief().lots().size(), "lot"),
        Say.count(audited.file().plan().batches().size(), "batch"),
        audited.file().plan().leftOut().size(),
        audited.findings().isEmpty()
            ? audited.changed().isEmpty()
                ? "every rule is kept"
                : "every rule is kept for the week as it was when it was planned"
            : Say.count(audited.findings().size(), "finding"));
    out.flush();
  }

  private static JsonOut json(PlanShelf.Audited audited) {
    List<JsonOut> findings = new ArrayList<>();
    for (Finding f : audited.findings()) {
      findings.add(
          new JsonOut().put("rule", f.rule()).put("subject", f.subject()).put("words", f.words()));
    }
    return new JsonOut()
        .put("clean", audited.findings().isEmpty())
        .put("findings", findings)
        .put("inputs_changed", audited.changed());
  }
}
