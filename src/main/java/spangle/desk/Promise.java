package spangle.desk;

import java.util.List;
import java.util.Optional;
import spangle.intake.problem.Problem;
import spangle.plan.Finding;
import spangle.plan.Held;
import spangle.plan.Plan;
import spangle.solve.Freedom;

/**
 * When a new job can be had.
 *
 * @param jobs ids of the new jobs
 * @param work what is wanted, a line for each part
 * @param dueMin when it is wanted, the latest of its parts
 * @param offers dates, the gentlest first; empty where there is none
 * @param held parts behind a shut gate: there is no date for them until a person opens it
 * @param lacking why there is no date, in words; empty where there is one
 * @param notes what else must be known: what the answer rests on
 * @param problems what is wrong or doubtful in the job file
 */
public record Promise(
    List<String> jobs,
    List<String> work,
    int dueMin,
    List<Offer> offers,
    List<Held> held,
    List<String> lacking,
    List<String> notes,
    List<Problem> problems) {
  /** Copies the lists. */
  public Promise {
    jobs = List.copyOf(jobs);
    work = List.copyOf(work);
    offers = List.copyOf(offers);
    held = List.copyOf(held);
    lacking = List.copyOf(lacking);
    notes = List.copyOf(notes);
    problems = List.copyOf(problems);
  }

  /**
   * One date.
   *
   * @param freedom what may change for it
   * @param endMin when the last piece is finished
   * @param loadsMoved announced loads that stand elsewhere or at another time
   * @param slips who is finished later than announced and is late by it, in words
   * @param kits what it means for kits, in words
   * @param where the loads the new pieces hang on, in words
   * @param conditions what must come true for it, in words
   * @param plan the whole plan
   * @param findings what the audit says of it; empty for a plan that keeps every rule
   */
  public record Offer(
      Freedom freedom,
      int endMin,
      int loadsMoved,
      List<String> slips,
      List<String> kits,
      List<String> where,
      List<String> conditions,
      Plan plan,
      List<Finding> findings) {
    /** Copies the lists. */
    public Offer {
      slips = List.copyOf(slips);
      kits = List.copyOf(kits);
      where = List.copyOf(where);
      conditions = List.copyOf(conditions);
      findings = List.copyOf(findings);
    }

    /** When, in words. */
    public String when() {
      return DayWords.of(endMin);
    }
  }

  /** The date that breaks no word given to anybody else, if there is one. */
  public Optional<Offer> honest() {
    return offers.stream().filter(o -> o.freedom() != Freedom.DATES_MAY_SLIP).findFirst();
  }

  /** Whether everything wanted has a date, in time, with nothing else late for it. */
  public boolean kept() {
    return held.isEmpty()
        && offers.stream()
            .filter(o -> o.freedom() != Freedom.DATES_MAY_SLIP)
            .anyMatch(o -> o.endMin() <= dueMin && o.findings().isEmpty());
  }

  /** When the job is wanted, in words. */
  public String dueWords() {
    return DayWords.due(dueMin);
  }
}
