package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import spangle.intake.problem.Problem;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.report.DrawingNote;

/** Shows the flat patterns of a week as they were understood, with what is doubtful in them. */
final class DrawnParts {
  private DrawnParts() {}

  static List<DrawingNote> notes(WeekInput input) {
    List<DrawingNote> notes = new ArrayList<>();
    for (Job job : input.jobs()) {
      for (PartLine part : job.parts()) {
        if (!part.body().picture().isEmpty()) {
          notes.add(
              new DrawingNote(
                  job.id(),
                  part.id(),
                  part.description(),
                  words(input, job.id(), part),
                  part.body().picture()));
        }
      }
    }
    return notes;
  }

  private static String words(WeekInput input, String jobId, PartLine part) {
    String file = part.body().drawing();
    StringBuilder words = new StringBuilder(file.substring(file.lastIndexOf('/') + 1));
    for (Problem problem : input.problems()) {
      boolean here =
          problem.place().file().equals(file)
              && problem.job().equals(jobId)
              && problem.part().equals(part.id());
      if (here) {
        String why = problem.why();
        words.append(". ").append(Character.toUpperCase(why.charAt(0))).append(why.substring(1));
      }
    }
    return words.append('.').toString();
  }
}
