package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import spangle.plan.Brief;
import spangle.plan.BriefBuilder;
import spangle.plan.Finding;
import spangle.plan.Plan;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;

/** Audits plans made by hand, their figures counted so that only the rule at hand can break. */
final class Audited {
  private Audited() {}

  static Plan counted(Brief brief, Plan plan) {
    return PlanFixtures.withFigures(plan, Figures.of(new PlanView(brief, plan)));
  }

  static List<Finding> findings(BriefBuilder brief, PlannedBatch... batches) {
    return findings(brief.build(), PlanFixtures.plan(batches));
  }

  static List<Finding> findings(Brief brief, Plan plan) {
    return Audit.of(brief, counted(brief, plan));
  }

  /** The plan keeps every rule. */
  static void keeps(BriefBuilder brief, PlannedBatch... batches) {
    assertThat(findings(brief, batches)).isEmpty();
  }

  /** The plan breaks this rule and no other, once, and says so in words with this in them. */
  static void breaks(String rule, String words, BriefBuilder brief, PlannedBatch... batches) {
    breaks(rule, words, brief.build(), PlanFixtures.plan(batches));
  }

  /** The plan breaks this rule and no other, once, and says so in words with this in them. */
  static void breaks(String rule, String words, Brief brief, Plan plan) {
    List<Finding> findings = findings(brief, plan);
    assertThat(findings).extracting(Finding::rule).containsExactly(rule);
    assertThat(findings.get(0).words()).contains(words);
  }
}
