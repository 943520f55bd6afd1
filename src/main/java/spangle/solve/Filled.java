package spangle.solve;

import java.util.List;
import spangle.plan.Plan;

/**
 * A plan with more work in it.
 *
 * @param plan the plan
 * @param in the chains that found a place
 */
public record Filled(Plan plan, List<List<String>> in) {
  /** Copies the list. */
  public Filled {
    in = List.copyOf(in);
  }
}
