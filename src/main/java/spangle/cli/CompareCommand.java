package spangle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.Balance;
import spangle.desk.PartChange;
import spangle.desk.PlanCompare;
import spangle.desk.PlanShelf;
import spangle.plan.json.PlanFile;
import spangle.report.Change;
import spangle.report.week.Say;

/** What moved between two plans. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = "What another plan means for jobs, kits and loads, in words.",
    footer = {
      "",
      "Example: what a Saturday shift would buy",
      "  spangle plan samples/harbour-week",
      "  spangle plan samples/harbour-week --with samples/what-if/saturday-shift.yaml",
      "  spangle compare samples/harbour-week/plan samples/what-if/saturday-shift.plan",
      "The same with samples/what-if/kettle-outside.yaml: galvanizing in the house or bought"
    })
final class CompareCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan before.")
  @SuppressWarnings("NullAway.Init")
  private Path before;

  @Parameters(index = "1", paramLabel = "PLAN", description = "The plan after.")
  @SuppressWarnings("NullAway.Init")
  private Path after;

  @Option(names = "--all", description = "Names parts that stay in time and every lot, too.")
  private boolean all;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    PlanCompare.Difference difference = PlanCompare.of(read(before), read(after));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      asJson(difference).print(out);
    } else {
      words(difference, out);
      out.flush();
    }
    return ExitCode.DONE;
  }

  private void words(PlanCompare.Difference difference, PrintWriter out) {
    if (difference.changes().isEmpty() && difference.made().isEmpty()) {
      out.println("Nothing moves: both plans put every lot in the same place at the same time.");
      return;
    }
    section(out, "What is different", difference.made());
    section(
        out,
        "What it comes to",
        difference.balance().stream()
            .filter(b -> !b.verdict().equals("same"))
            .map(Balance::words)
            .toList());
    section(out, "Kits", difference.kits());
    parts(
        out,
        "Late with the second plan, not with the first",
        difference,
        c -> c.lateNow() && !c.lateBefore());
    parts(out, "No longer late", difference, c -> !c.lateNow() && c.lateBefore());
    parts(out, "Late with both", difference, c -> c.lateNow() && c.lateBefore());
    Predicate<PartChange> inTime = c -> !c.lateNow() && !c.lateBefore();
    if (all) {
      parts(out, "In time with both", difference, inTime);
      section(
          out,
          "Lots",
          difference.changes().stream()
              .map(
                  c ->
                      String.format(
                          Locale.ROOT,
                          "%s %s: %s -> %s; tell %s",
                          c.kind(),
                          c.subject(),
                          c.before(),
                          c.after(),
                          c.tell()))
              .toList());
    }
    out.printf(
        Locale.ROOT,
        "Moved and still in time: %s more. Elsewhere or at another time: %s, on %s.%s%n",
        Say.count(difference.parts().stream().filter(inTime).count(), "part"),
        Say.count(difference.changes().size(), "lot"),
        Say.count(difference.loadsMoved(), "load"),
        all || difference.changes().isEmpty() ? "" : " With --all each is named.");
  }

  private static void parts(
      PrintWriter out,
      String title,
      PlanCompare.Difference difference,
      Predicate<PartChange> which) {
    section(out, title, difference.parts().stream().filter(which).map(PartChange::words).toList());
  }

  private static void section(PrintWriter out, String title, List<String> lines) {
    if (!lines.isEmpty()) {
      out.println(title);
      lines.forEach(line -> out.println("  " + line));
    }
  }

  private static JsonOut asJson(PlanCompare.Difference difference) {
    List<JsonOut> changes = new ArrayList<>();
    for (Change c : difference.changes()) {
      changes.add(
          new JsonOut()
              .put("kind", c.kind())
              .put("lot", c.subject())
              .put("before", c.before())
              .put("after", c.after())
              .put("tell", c.tell()));
    }
    List<JsonOut> balance = new ArrayList<>();
    for (Balance b : difference.balance()) {
      balance.add(
          new JsonOut()
              .put("name", b.name())
              .put("before", b.before())
              .put("after", b.after())
              .put("verdict", b.verdict()));
    }
    return new JsonOut()
        .put("different", difference.made())
        .put("balance", balance)
        .put("parts", difference.parts().stream().map(PartChangeJson::of).toList())
        .put("kits", difference.kits())
        .put("loads_moved", difference.loadsMoved())
        .put("minutes_moved", difference.minutesMoved())
        .put("changes", changes);
  }

  private static PlanFile read(Path plan) {
    return PlanReading.of(plan, () -> PlanShelf.read(plan));
  }
}
