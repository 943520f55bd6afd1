package spangle.audit;

import java.util.Optional;

/** One rule of the trade that a plan keeps or breaks. */
abstract class Rule {
  private final String name;
  private final String words;
  private final String solverConstraint;

  /**
   * A rule.
   *
   * @param name stable name, as it stands in findings
   * @param words what it asks, in one sentence
   * @param solverConstraint name of the search's constraint of the same meaning; empty where plans
   *     are built so that the rule cannot be broken
   */
  Rule(String name, String words, String solverConstraint) {
    this.name = name;
    this.words = words;
    this.solverConstraint = solverConstraint;
  }

  final String name() {
    return name;
  }

  final String words() {
    return words;
  }

  final Optional<String> solverConstraint() {
    return solverConstraint.isEmpty() ? Optional.empty() : Optional.of(solverConstraint);
  }

  /** Looks for everything in the plan that breaks this rule. */
  abstract void check(PlanView view, Findings findings);
}
