package spangle.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Severity;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.intake.week.PartLine;
import spangle.intake.week.Shop;
import spangle.intake.week.WeekInput;
import spangle.plan.Held;

/** Says everything that is wrong or doubtful in a week folder, shut gates among it. */
public final class CheckDesk {
  /**
   * What was found.
   *
   * @param week name of the week folder
   * @param stopped whether nothing can be planned
   * @param rows part rows read, accepted, refused
   * @param problems danger first, then what is due first
   */
  public record Checked(String week, boolean stopped, WeekInput.Rows rows, List<Problem> problems) {
    /** Copies the list. */
    public Checked {
      problems = List.copyOf(problems);
    }

    /** Whether somebody has to do or answer something. */
    public boolean waits() {
      return problems.stream().anyMatch(p -> p.severity() != Severity.WARN);
    }
  }

  private CheckDesk() {}

  /** Reads a week folder and asks every gate. */
  public static Checked check(Path week) {
    return check(week, Optional.empty());
  }

  /** Reads a week folder as it would be with an overlay and asks every gate. */
  public static Checked check(Path week, Optional<Path> overlay) {
    WeekReader.Reading reading = WeekReader.read(week, Besides.overlay(overlay));
    List<Problem> problems = new ArrayList<>(reading.problems());
    reading.input().map(BriefMaker::prepare).ifPresent(w -> problems.addAll(gates(w)));
    problems.sort(Problem.BY_DANGER_THEN_DUE);
    Path name = week.getFileName();
    return new Checked(
        name == null ? "week" : name.toString(), reading.stopped(), reading.rows(), problems);
  }

  /** When something is due, in words; midnight belongs to the day it ends. */
  public static String dueWords(int dueMin) {
    if (dueMin <= 0) {
      return "before the week";
    }
    return dueMin % Shop.DAY_MIN == 0
        ? "end of " + DayWords.of(dueMin - 1).replaceFirst(" [0-9:]+$", "")
        : DayWords.of(dueMin);
  }

  private static List<Problem> gates(PreparedWeek week) {
    List<Problem> problems = new ArrayList<>();
    for (Held held : week.held()) {
      ProblemCode code = ProblemCode.ofKey(held.gate());
      boolean said =
          week.input().problems().stream()
              .anyMatch(
                  p ->
                      same(p.code(), code, held.gate())
                          && p.job().equals(held.jobId())
                          && p.part().equals(held.partId()));
      if (!said) {
        problems.add(problem(week.input(), held, code));
      }
    }
    return problems;
  }

  /**
   * A bent part or an open body without figures has been asked about with more words already, and
   * so have pieces of which nobody says when they come.
   */
  private static boolean same(ProblemCode said, ProblemCode code, String gate) {
    if (gate.equals(Held.NOT_ARRIVED)) {
      return said == ProblemCode.ARRIVALS_DO_NOT_ADD_UP;
    }
    boolean drawn = said == ProblemCode.FOLDED_SIZE_MISSING || said == ProblemCode.BODY_NOT_CLOSED;
    return said == code || (code == ProblemCode.SIZE_UNKNOWN && drawn);
  }

  private static Problem problem(WeekInput input, Held held, ProblemCode code) {
    Place place = part(input, held).map(PartLine::place).orElse(Place.file("jobs"));
    return new Problem(
            code,
            held.danger() == 0 ? Severity.DANGER : code.severity(),
            place,
            "",
            "",
            "",
            held.words(),
            held.opens(),
            code.meanwhile())
        .of(held.jobId(), held.partId(), held.dueMin());
  }

  private static Optional<PartLine> part(WeekInput input, Held held) {
    return input.jobs().stream()
        .filter(j -> j.id().equals(held.jobId()))
        .flatMap(j -> j.parts().stream())
        .filter(p -> p.id().equals(held.partId()))
        .findFirst();
  }
}
