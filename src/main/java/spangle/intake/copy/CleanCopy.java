package spangle.intake.copy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Severity;
import spangle.intake.week.Answer;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.measure.SafeCell;

/**
 * The job files of a week written anew. Reading the copy gives the parts that were read; copying
 * the copy gives the same bytes.
 */
public final class CleanCopy {
  /** The table of accepted parts, path below the week folder. */
  public static final String JOBS = "jobs/jobs.csv";

  /** The table of refused rows; beside the jobs, so that nothing reads it as one. */
  public static final String REFUSED = "refused-rows.csv";

  /** The answers that say a doubtful value is right as written. */
  public static final String ANSWERS = "answers.yaml";

  private static final List<String> REFUSED_HEADINGS =
      List.of("place", "job", "part", "field", "value", "problem", "why", "what to do");

  private CleanCopy() {}

  /**
   * The files that take the place of the job files, their answers and learned columns.
   *
   * @param week what was accepted
   * @param answers all answers given so far
   * @return content by path below the copy's folder
   */
  public static SortedMap<String, byte[]> of(WeekInput week, List<Answer> answers) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (Job job : week.jobs()) {
      for (PartLine part : job.parts()) {
        rows.add(CleanRow.of(job, part, week.shop().weekStart()));
      }
    }
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put(JOBS, table(CleanRow.HEADINGS, rows.stream().map(Map::values).toList()));
    List<List<String>> refused = refused(week.problems());
    if (!refused.isEmpty()) {
      files.put(REFUSED, table(REFUSED_HEADINGS, refused));
    }
    List<Answer> kept = kept(answers, rows);
    if (!kept.isEmpty()) {
      files.put(ANSWERS, yaml(kept));
    }
    return files;
  }

  private static byte[] table(List<String> headings, List<? extends Iterable<String>> rows) {
    StringBuilder out = new StringBuilder();
    line(out, headings);
    rows.forEach(row -> line(out, row));
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void line(StringBuilder out, Iterable<String> cells) {
    String between = "";
    for (String cell : cells) {
      out.append(between).append(SafeCell.csv(cell, ','));
      between = ",";
    }
    out.append("\r\n");
  }

  private static List<List<String>> refused(List<Problem> problems) {
    return problems.stream()
        .filter(p -> p.severity() == Severity.REFUSED)
        .map(
            p ->
                List.of(
                    p.place().words(),
                    p.job(),
                    p.part(),
                    p.field(),
                    p.value(),
                    p.code().key(),
                    p.why(),
                    p.remedy()))
        .toList();
  }

  /** A value kept as it was stands in the copy in house units, and the answer follows it. */
  private static List<Answer> kept(List<Answer> answers, List<Map<String, String>> rows) {
    List<Answer> kept = new ArrayList<>();
    for (Answer answer : answers) {
      if (answer.keep()) {
        cell(answer.ask(), rows)
            .ifPresent(
                text -> kept.add(new Answer(answer.ask(), text, "keep", answer.by(), answer.at())));
      }
    }
    return kept;
  }

  private static Optional<String> cell(String ask, List<Map<String, String>> rows) {
    for (Map<String, String> row : rows) {
      String start = row.get("job") + "/" + row.get("part") + "/";
      if (ask.startsWith(start)) {
        String field = ask.substring(start.length());
        return row.entrySet().stream()
            .filter(e -> e.getKey().equals(field) || e.getKey().startsWith(field + "_"))
            .map(Map.Entry::getValue)
            .findFirst();
      }
    }
    return Optional.empty();
  }

  private static byte[] yaml(List<Answer> answers) {
    return answers.stream()
        .map(CleanCopy::yaml)
        .collect(Collectors.joining("", "answers:\n", ""))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String yaml(Answer answer) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("ask", answer.ask());
    fields.put("was", answer.was());
    fields.put("answer", answer.answer());
    fields.put("by", answer.by());
    fields.put("at", answer.at());
    return fields.entrySet().stream()
        .filter(e -> !e.getValue().isEmpty() || e.getKey().equals("was"))
        .map(e -> e.getKey() + ": " + quoted(e.getValue()))
        .collect(Collectors.joining(", ", "  - {", "}\n"));
  }

  private static String quoted(String text) {
    return '"' + Plain.line(text).replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
