package spangle.audit;

import java.util.ArrayList;
import java.util.List;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Plan;

/** Proves a plan against its brief. */
public final class Audit {
  private Audit() {}

  /**
   * Everything in the plan that breaks a rule; empty when the plan keeps them all.
   *
   * <p>What the brief holds as frozen is fact: it is checked for standing in the plan unchanged and
   * for leaving what comes after it room, not for having been wise.
   *
   * <p>A brief that does not hold together is the only thing found: nothing can be proved by it.
   *
   * @return findings in the order of the {@link RuleBook}, within a rule in the plan's order
   */
  public static List<Finding> of(Brief brief, Plan plan) {
    PlanView view = new PlanView(brief, plan);
    Findings unsound = new Findings(RuleBook.SOUND.name());
    RuleBook.SOUND.check(view, unsound);
    if (!unsound.found().isEmpty()) {
      return unsound.found();
    }
    List<Finding> all = new ArrayList<>();
    for (Rule rule : RuleBook.RULES) {
      Findings findings = new Findings(rule.name());
      rule.check(view, findings);
      all.addAll(findings.found());
    }
    return List.copyOf(all);
  }
}
