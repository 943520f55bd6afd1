package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.problem.Severity;
import spangle.intake.source.Datum;
import spangle.intake.week.Answer;

/**
 * Answers people have given to earlier questions. An answer stands in for the value it was given
 * about, and only while that value is still written; the file itself is never changed.
 */
final class AnswerBook {
  private final Map<String, Answer> answers = new LinkedHashMap<>();
  private final Map<String, Datum.Scalar> places = new LinkedHashMap<>();
  private final Set<String> used = new LinkedHashSet<>();

  static AnswerBook none() {
    return new AnswerBook();
  }

  static AnswerBook read(Datum.Group group, Notes notes) {
    Fields fields = new Fields(group, notes);
    AnswerBook book = new AnswerBook();
    for (Fields entry : fields.groups("answers")) {
      Optional<Datum.Scalar> ask = entry.needed("ask");
      String was = entry.text("was");
      Optional<Datum.Scalar> answer = entry.needed("answer");
      Answer read =
          new Answer(
              ask.map(Datum.Scalar::text).orElse(""),
              was,
              answer.map(Datum.Scalar::text).orElse(""),
              entry.text("by"),
              entry.text("at"));
      entry.finish();
      if (ask.isPresent() && answer.isPresent()) {
        book.answers.put(read.ask(), read);
        book.places.put(read.ask(), ask.get());
      }
    }
    fields.finish();
    return book;
  }

  /** Every answer, in the order of the file. */
  List<Answer> all() {
    return List.copyOf(answers.values());
  }

  /** The name of a question about one field of one part. */
  static String ask(String job, String part, String field) {
    return job + "/" + part + "/" + field;
  }

  /** A row with the values that were answered in place of those asked about. */
  Datum.Group applied(Datum.Group row) {
    if (answers.isEmpty()) {
      return row;
    }
    Map<String, Datum.Entry> entries = new LinkedHashMap<>(row.entries());
    String job = text(row, "job");
    String part = text(row, "part");
    for (Map.Entry<String, Datum.Entry> entry : row.entries().entrySet()) {
      Answer answer = answers.get(ask(job, part, JobColumns.stem(entry.getKey())));
      if (answer != null
          && !answer.keep()
          && entry.getValue().value() instanceof Datum.Scalar scalar
          && scalar.text().equals(answer.was())) {
        used.add(answer.ask());
        Datum.Scalar answered = new Datum.Scalar(scalar.place(), answer.answer());
        entries.put(entry.getKey(), new Datum.Entry(entry.getValue().keyPlace(), answered));
      }
    }
    addMissing(entries, job, part);
    return new Datum.Group(row.place(), entries);
  }

  /** A value that was missing has no entry to stand in for. */
  private void addMissing(Map<String, Datum.Entry> entries, String job, String part) {
    String start = ask(job, part, "");
    for (Answer answer : answers.values()) {
      String field = answer.ask().startsWith(start) ? answer.ask().substring(start.length()) : "";
      boolean missing =
          !field.isEmpty()
              && !answer.keep()
              && answer.was().isEmpty()
              && entries.keySet().stream().noneMatch(k -> JobColumns.stem(k).equals(field));
      Datum.Scalar ask = places.get(answer.ask());
      if (missing && ask != null) {
        used.add(answer.ask());
        Datum.Scalar scalar = new Datum.Scalar(ask.place(), answer.answer());
        entries.put(field, new Datum.Entry(ask.place(), scalar));
      }
    }
  }

  private static String text(Datum.Group row, String key) {
    Datum.Entry entry = row.entries().get(key);
    return entry != null && entry.value() instanceof Datum.Scalar scalar ? scalar.text() : "";
  }

  /** The answer to a question that is not about one value. */
  Optional<String> answer(String ask) {
    Answer answer = answers.get(ask);
    if (answer == null) {
      return Optional.empty();
    }
    used.add(ask);
    return Optional.of(answer.answer());
  }

  /** Problems without the questions somebody has answered with keep. */
  List<Problem> withoutKept(List<Problem> problems) {
    List<Problem> left = new ArrayList<>();
    for (Problem problem : problems) {
      Answer answer = answers.get(problem.ask());
      if (answer != null
          && answer.keep()
          && problem.severity() == Severity.ASK
          && problem.value().equals(answer.was())) {
        used.add(answer.ask());
      } else {
        left.add(problem);
      }
    }
    return left;
  }

  /** Notes the answers nobody asked for. */
  void noteStale(Problems problems) {
    for (Map.Entry<String, Answer> entry : answers.entrySet()) {
      Datum.Scalar ask = places.get(entry.getKey());
      if (!used.contains(entry.getKey()) && ask != null) {
        problems.add(
            ProblemCode.ANSWER_STALE,
            ask.place(),
            "ask",
            entry.getKey(),
            "",
            "nothing asks this any more, or the value is no longer '"
                + entry.getValue().was()
                + "'",
            "take the answer out, or give it anew for the value that stands there now");
      }
    }
  }
}
