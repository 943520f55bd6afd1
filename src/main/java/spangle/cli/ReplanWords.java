package spangle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spangle.desk.ChangeList;
import spangle.desk.ReplanDesk;
import spangle.intake.problem.Problem;
import spangle.plan.Finding;
import spangle.plan.PlanFigures;
import spangle.report.week.Say;

/** What the replan command says. */
final class ReplanWords {
  private ReplanWords() {}

  static String screen(
      ReplanDesk.Replan replan, String before, List<Problem> problems, Path target) {
    StringBuilder text = new StringBuilder();
    ChangeList changes = replan.changes();
    text.append(
        String.format(
            Locale.ROOT,
            "Version %s against %s: %s moved%s, %s, %s in another order%n",
            replan.version(),
            before,
            Say.count(changes.loadsMoved(), "load"),
            changes.loadsDropped() > 0 ? ", " + changes.loadsDropped() + " dropped" : "",
            Say.count(changes.minutesMoved(), "minute"),
            Say.count(changes.coloursReordered(), "colour")));
    changes.held().forEach(h -> line(text, "! HOLD %s", h));
    replan.refused().forEach(r -> line(text, "! does not count: %s", r));
    problems.stream()
        .filter(p -> p.place().file().equals("events.yaml"))
        .forEach(p -> line(text, "! %s: %s; %s", p.place().words(), p.why(), p.remedy()));
    for (Finding finding : replan.made().findings()) {
      line(text, "! %s: %s [%s]", finding.subject(), finding.words(), finding.rule());
    }
    for (ChangeList.Line each : changes.lines()) {
      String load = each.load().isEmpty() ? "" : each.load() + ": ";
      line(text, "%-8s %s%s", each.kind().word(), load, each.what());
      line(text, "          %s -> %s", each.before(), each.after());
      if (!each.reason().isEmpty()) {
        line(text, "          because %s", each.reason());
      }
      String sheet = each.sheet().isEmpty() ? "" : "; sheet " + each.sheet();
      line(text, "          tell %s%s", each.tell(), sheet);
    }
    if (changes.lines().isEmpty()) {
      line(text, "Nothing moves.");
    }
    PlanFigures f = replan.made().plan().figures();
    line(
        text,
        "%d late lots, %d left out, %d held.",
        f.lateLots(),
        replan.made().plan().leftOut().size(),
        replan.made().week().held().size());
    line(text, "Change list: %s", target.resolve("changes.html"));
    return text.toString();
  }

  private static void line(StringBuilder text, String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append(System.lineSeparator());
  }

  static JsonOut json(ReplanDesk.Replan replan, Path target, List<String> files) {
    List<JsonOut> changes = new ArrayList<>();
    for (ChangeList.Line c : replan.changes().lines()) {
      changes.add(
          new JsonOut()
              .put("kind", c.kind().word())
              .put("load", c.load())
              .put("what", c.what())
              .put("before", c.before())
              .put("after", c.after())
              .put("reason", c.reason())
              .put("tell", c.tell())
              .put("sheet", c.sheet())
              .put("start_min", c.startMin()));
    }
    return new JsonOut()
        .put("out", target.toString().replace('\\', '/'))
        .put("files", files)
        .put("version", replan.version())
        .put("kept_version", replan.replanned().keptVersion())
        .put("at_min", replan.replanned().atMin())
        .put("loads_moved", replan.changes().loadsMoved())
        .put("loads_dropped", replan.changes().loadsDropped())
        .put("minutes_moved", replan.changes().minutesMoved())
        .put("colours_reordered", replan.changes().coloursReordered())
        .put("changes", changes)
        .put("held_until_inspected", replan.changes().held())
        .put("refused_events", replan.refused())
        .put("left_out", replan.made().plan().leftOut().stream().map(l -> l.lotId()).toList())
        .put(
            "held",
            replan.made().week().held().stream()
                .map(h -> h.jobId() + "/" + h.partId() + " " + h.gate())
                .toList())
        .put("findings", replan.made().findings().stream().map(x -> x.words()).toList());
  }
}
