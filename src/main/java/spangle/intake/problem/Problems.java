package spangle.intake.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Collects problems while files are read. Not for several threads. */
public final class Problems {
  /** More than this of one file are counted, not listed: a wrong separator marks every cell. */
  public static final int MOST_LISTED = 20_000;

  private final List<Problem> list = new ArrayList<>();
  private long unlisted;

  /** Notes a problem of the code's own severity. */
  public void add(
      ProblemCode code,
      Place place,
      String field,
      String value,
      String limit,
      String why,
      String remedy) {
    add(
        new Problem(
            code, code.severity(), place, field, value, limit, why, remedy, code.meanwhile()));
  }

  /** Notes a problem. */
  public void add(Problem problem) {
    if (list.size() < MOST_LISTED || problem.severity().compareTo(Severity.REFUSED) <= 0) {
      list.add(problem);
    } else {
      unlisted++;
    }
  }

  /** Takes over another list. */
  public void addAll(Problems other) {
    other.list.forEach(this::add);
    unlisted += other.unlisted;
  }

  /** Takes back what has been answered elsewhere. */
  public void removeIf(Predicate<Problem> answered) {
    list.removeIf(answered);
  }

  /** As noted so far. */
  public List<Problem> list() {
    return List.copyOf(list);
  }

  /** Danger first, then what is due first, then by place. */
  public List<Problem> sorted() {
    return list.stream().sorted(Problem.BY_DANGER_THEN_DUE).toList();
  }

  /** Questions and warnings that were counted and not listed. */
  public long unlisted() {
    return unlisted;
  }

  /** Whether anything as bad as this has been noted. */
  public boolean any(Severity atLeast) {
    return list.stream().anyMatch(p -> p.severity().compareTo(atLeast) <= 0);
  }

  /** Whether nothing has been noted. */
  public boolean isEmpty() {
    return list.isEmpty();
  }
}
