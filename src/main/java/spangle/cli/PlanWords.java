package spangle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import spangle.desk.PlanDesk;
import spangle.plan.PlanFigures;

/** What the plan command says of a planned week. */
final class PlanWords {
  private PlanWords() {}

  static String screen(PlanDesk.Made made, Path target, List<String> files) {
    StringBuilder text = new StringBuilder(spangle.report.TerminalSummary.of(made.report()));
    text.append(String.format(Locale.ROOT, "%nSheets: %s%n", target.resolve("index.html")));
    text.append("Files: ").append(String.join(", ", files)).append(System.lineSeparator());
    return text.toString();
  }

  static JsonOut json(PlanDesk.Made made, Path target, List<String> files) {
    PlanFigures f = made.plan().figures();
    Map<String, Object> figures = new TreeMap<>();
    figures.put("batches", f.batches());
    figures.put("loads", f.loads());
    figures.put("run_minutes", f.runMinutes());
    figures.put("colour_changes", f.colourChanges());
    figures.put("setting_minutes", f.settingMinutes());
    figures.put("late_lots", f.lateLots());
    figures.put("late_kits", f.lateKits());
    figures.put("goal", f.goal());
    return new JsonOut()
        .put("out", target.toString().replace('\\', '/'))
        .put("files", files)
        .put("figures", figures)
        .put("left_out", made.plan().leftOut().stream().map(l -> l.lotId()).toList())
        .put(
            "held",
            made.week().held().stream()
                .map(h -> h.jobId() + "/" + h.partId() + " " + h.gate())
                .toList())
        .put("problems", made.week().input().problems().size())
        .put("findings", made.findings().stream().map(x -> x.words()).toList());
  }
}
