package spangle.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.problem.Problem;
import spangle.intake.read.WeekReader;
import spangle.intake.week.WeekInput;
import spangle.plan.Held;

/** What is wrong or doubtful in a week's inputs, gates included. */
public final class CheckDesk {
  private CheckDesk() {}

  /**
   * The answer.
   *
   * @param stopped whether nothing can be planned
   * @param rows rows read, accepted, refused
   * @param problems all problems, danger first, then due
   * @param held parts a gate keeps out
   */
  public record Checked(
      boolean stopped, WeekInput.Rows rows, List<Problem> problems, List<Held> held) {
    /** Copies the lists. */
    public Checked {
      problems = List.copyOf(problems);
      held = List.copyOf(held);
    }

    /** Whether nothing waits for anybody. */
    public boolean clean() {
      return problems.isEmpty() && held.isEmpty();
    }
  }

  /** Reads a week folder and asks every gate. */
  public static Checked check(Path week) {
    WeekReader.Reading reading = WeekReader.read(week);
    Optional<PreparedWeek> prepared = reading.input().map(BriefMaker::prepare);
    return new Checked(
        reading.stopped(),
        reading.rows(),
        reading.problems(),
        prepared.map(PreparedWeek::held).orElse(List.of()));
  }
}
