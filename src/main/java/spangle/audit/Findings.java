package spangle.audit;

import java.util.ArrayList;
import java.util.List;
import spangle.plan.Finding;

/** Collects what one rule finds. */
final class Findings {
  private final String rule;
  private final List<Finding> found = new ArrayList<>();

  Findings(String rule) {
    this.rule = rule;
  }

  void add(String subject, String words) {
    found.add(new Finding(rule, subject, words));
  }

  List<Finding> found() {
    return List.copyOf(found);
  }
}
