package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;

/** Puts rows together to jobs, finds parts that stand twice, and counts every row. */
final class JobMerge {
  private record Key(String job, String part) {}

  private final AnswerBook answers;
  private final Problems problems;
  private final Map<String, String> customers = new LinkedHashMap<>();
  private final Map<String, Map<String, List<PartLine>>> parts = new LinkedHashMap<>();
  private int read;
  private int refused;

  JobMerge(AnswerBook answers, Problems problems) {
    this.answers = answers;
    this.problems = problems;
  }

  void take(PartRow.Reading row) {
    read++;
    answers.withoutKept(row.problems()).forEach(problems::add);
    if (row.part().isEmpty()) {
      refused++;
      return;
    }
    customers.merge(row.jobId(), row.customer(), (a, b) -> a.isEmpty() ? b : a);
    parts
        .computeIfAbsent(row.jobId(), job -> new LinkedHashMap<>())
        .computeIfAbsent(row.part().get().id(), part -> new ArrayList<>())
        .add(row.part().get());
  }

  boolean any() {
    return read > 0;
  }

  /** Rows read, accepted, refused; call after {@link #jobs()}. */
  WeekInput.Rows rows() {
    return new WeekInput.Rows(read, read - refused, refused);
  }

  /** Jobs in the order of the files. */
  List<Job> jobs() {
    List<Job> jobs = new ArrayList<>();
    parts.forEach(
        (job, rows) -> {
          List<PartLine> lines = new ArrayList<>();
          rows.forEach((part, same) -> one(new Key(job, part), same).ifPresent(lines::add));
          if (!lines.isEmpty()) {
            jobs.add(new Job(job, customers.getOrDefault(job, ""), lines));
          }
        });
    return jobs;
  }

  private Optional<PartLine> one(Key key, List<PartLine> rows) {
    if (rows.size() == 1) {
      return Optional.of(rows.get(0));
    }
    boolean sameRevision = rows.stream().map(PartLine::revision).distinct().count() == 1;
    if (sameRevision) {
      for (PartLine copy : rows.subList(1, rows.size())) {
        refused++;
        note(
            ProblemCode.PART_TWICE,
            key,
            copy,
            copy.id(),
            "the part stands in the job already, at " + rows.get(0).place().words(),
            "take one out; if they differ in finish or lot, give the second another part id");
      }
      return Optional.of(rows.get(0));
    }
    return byRevision(key, rows);
  }

  private Optional<PartLine> byRevision(Key key, List<PartLine> rows) {
    String ask = AnswerBook.ask(key.job(), key.part(), "revision");
    Optional<String> wanted = answers.answer(ask);
    Optional<PartLine> chosen =
        wanted.flatMap(w -> rows.stream().filter(r -> r.revision().equals(w)).findFirst());
    for (PartLine row : rows) {
      if (chosen.isPresent() && chosen.get().equals(row)) {
        continue;
      }
      refused++;
      String revisions =
          rows.stream()
              .map(r -> "'" + r.revision() + "' at " + r.place().words())
              .toList()
              .toString();
      note(
          ProblemCode.REVISION_CONFLICT,
          key,
          row,
          row.revision(),
          chosen.isPresent()
              ? "revision '" + wanted.orElse("") + "' was confirmed; this row is left out"
              : "the part stands in the job in several revisions: " + revisions,
          "look which revision is on the pallet and answer it");
    }
    return chosen;
  }

  private void note(
      ProblemCode code, Key key, PartLine row, String value, String why, String remedy) {
    String field = code == ProblemCode.REVISION_CONFLICT ? "revision" : "part";
    problems.add(
        new Problem(
            code,
            code.severity(),
            row.place(),
            field,
            value,
            "",
            why,
            remedy,
            code.meanwhile(),
            code == ProblemCode.REVISION_CONFLICT
                ? AnswerBook.ask(key.job(), key.part(), field)
                : "",
            key.job(),
            key.part(),
            row.wanted().dueMin()));
  }
}
