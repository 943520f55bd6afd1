package spangle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import spangle.plan.PlanFigures;
import spangle.plan.PlannedBatch;
import spangle.report.week.Answer;
import spangle.report.week.Printable;
import spangle.report.week.Say;
import spangle.report.week.TenAnswers;
import spangle.report.week.WeekIndex;

/** The ten answers on one screen of 80 columns and 24 lines, without colour. */
public final class TerminalSummary {
  /** Columns of an ordinary terminal. */
  public static final int COLUMNS = 80;

  /** Lines of an ordinary terminal, less the two that name the sheets. */
  public static final int LINES = 24;

  private static final int ANSWER_AT = 15;

  /** Heading, figures, and the line at the foot. */
  private static final int AROUND = 3;

  private TerminalSummary() {}

  /** The screen; every line ends with a line feed. */
  public static String of(WeekReport report) {
    WeekIndex index = new WeekIndex(report);
    List<Answer> answers = TenAnswers.of(index);
    List<String> yardstick = YardstickLines.of(index);
    int[] shown = room(answers, LINES - AROUND - yardstick.size());
    List<String> lines = new ArrayList<>();
    String heading =
        report.brief().name()
            + ", week of "
            + index.time().week()
            + ", version "
            + report.heading().version();
    lines.add(Say.cut(line(heading), COLUMNS));
    lines.add(Say.cut(figures(index), COLUMNS));
    yardstick.forEach(words -> lines.add(Say.cut(line(words), COLUMNS)));
    for (int i = 0; i < answers.size(); i++) {
      answer(lines, answers.get(i), shown[i]);
    }
    int findings = report.waiting().findings().size();
    lines.add(
        findings > 0
            ? "THE PLAN BREAKS " + Say.count(findings, "RULE").toUpperCase(Locale.ROOT)
            : "! needs you. Local codes and licensed practice decide.");
    return String.join("\n", lines) + "\n";
  }

  /**
   * How many details each answer shows: one each, then more where a person is needed; where there
   * is no room for one each, none of the last that need nobody.
   */
  private static int[] room(List<Answer> answers, int linesLeft) {
    int[] shown = answers.stream().mapToInt(a -> Math.min(1, a.details().size())).toArray();
    int left = linesLeft - answers.size();
    for (int lines : shown) {
      left -= lines;
    }
    List<Integer> order = new ArrayList<>();
    for (int i = answers.size() - 1; i >= 0; i--) {
      order.add(i);
    }
    order.sort(Comparator.comparing(i -> answers.get(i).alarm()));
    for (int i : order) {
      if (left < 0 && shown[i] > 0) {
        shown[i]--;
        left++;
      }
    }
    order.sort(Comparator.comparing(i -> !answers.get(i).alarm()));
    boolean grew = true;
    while (left > 0 && grew) {
      grew = false;
      for (int i : order) {
        if (left > 0 && shown[i] < answers.get(i).details().size()) {
          shown[i]++;
          left--;
          grew = true;
        }
      }
    }
    return shown;
  }

  private static String figures(WeekIndex index) {
    PlanFigures f = index.report().plan().figures();
    List<PlannedBatch> all = index.report().plan().batches();
    List<PlannedBatch> own = index.report().brief().inTheHouse(all);
    int minutes = own.stream().mapToInt(PlannedBatch::dwellMin).sum();
    int trips = all.size() - own.size();
    return String.join(
        ", ",
        Say.count(f.loads(), "load"),
        own.size() + " batches and dips",
        index.say().number(minutes / 60.0, 1)
            + " h in them"
            + (trips == 0 ? "" : ", " + Say.count(trips, "truck trip")),
        Say.count(f.colourChanges(), "colour change") + YardstickLines.heat(index));
  }

  private static void answer(List<String> lines, Answer answer, int shown) {
    int room = COLUMNS - ANSWER_AT;
    String mark = answer.alarm() ? "!" : " ";
    String number = answer.number() < 10 ? " " + answer.number() : "" + answer.number();
    String topic = mark + number + " " + answer.topic();
    lines.add(
        topic + " ".repeat(ANSWER_AT - topic.length()) + Say.cut(line(answer.answer()), room));
    for (int i = 0; i < shown; i++) {
      int unseen = answer.details().size() - shown;
      String more = i == shown - 1 && unseen > 0 ? " (+" + unseen + ")" : "";
      String detail = line(answer.details().get(i));
      lines.add(" ".repeat(ANSWER_AT) + Say.cut(detail, room - more.length()) + more);
    }
  }

  private static String line(String words) {
    return Printable.line(words);
  }
}
