package spangle.report;

import java.util.ArrayList;
import java.util.List;
import spangle.plan.PlanFigures;
import spangle.report.week.Answer;
import spangle.report.week.Printable;
import spangle.report.week.Say;
import spangle.report.week.TenAnswers;
import spangle.report.week.WeekIndex;

/** The ten answers on one screen of 80 columns and 24 lines, without colour. */
public final class TerminalSummary {
  /** Columns of an ordinary terminal. */
  public static final int COLUMNS = 80;

  private static final int ANSWER_AT = 38;

  private TerminalSummary() {}

  /** The screen; every line ends with a line feed. */
  public static String of(WeekReport report) {
    WeekIndex index = new WeekIndex(report);
    List<String> lines = new ArrayList<>();
    lines.add(
        report.brief().name()
            + ", week of "
            + index.time().week()
            + ", version "
            + report.heading().version());
    lines.add(figures(index));
    for (Answer answer : TenAnswers.of(index)) {
      answer(lines, answer);
    }
    int findings = report.waiting().findings().size();
    lines.add(
        findings > 0
            ? "THE PLAN BREAKS " + Say.count(findings, "RULE").toUpperCase(java.util.Locale.ROOT)
            : "! needs you. Local codes and licensed practice decide.");
    StringBuilder out = new StringBuilder();
    lines.forEach(
        line -> out.append(cut(Printable.text(line).replace('\n', ' '), COLUMNS)).append('\n'));
    return out.toString();
  }

  private static String figures(WeekIndex index) {
    PlanFigures f = index.report().plan().figures();
    return String.join(
        ", ",
        Say.count(f.loads(), "load"),
        f.batches() + " oven batches and dips",
        index.say().number(f.runMinutes() / 60.0, 1) + " h in them",
        Say.count(f.colourChanges(), "colour change"));
  }

  private static void answer(List<String> lines, Answer answer) {
    String mark = answer.alarm() ? "!" : " ";
    String number = answer.number() < 10 ? " " + answer.number() : "" + answer.number();
    String question = mark + number + " " + answer.question();
    lines.add(pad(question) + answer.answer());
    if (!answer.details().isEmpty()) {
      String more = answer.details().size() > 1 ? " (+" + (answer.details().size() - 1) + ")" : "";
      String detail = Printable.line(answer.details().get(0));
      lines.add("      " + cut(detail, COLUMNS - 6 - more.length()) + more);
    }
  }

  private static String pad(String question) {
    return question + " ".repeat(Math.max(1, ANSWER_AT - question.length()));
  }

  private static String cut(String line, int room) {
    if (line.codePointCount(0, line.length()) <= room) {
      return stripEnd(line);
    }
    return line.substring(0, line.offsetByCodePoints(0, room - 3)) + "...";
  }

  private static String stripEnd(String line) {
    return line.stripTrailing();
  }
}
