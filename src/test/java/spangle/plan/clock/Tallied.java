package spangle.plan.clock;

import spangle.plan.Brief;

/** Plans that come to what a test says. */
public final class Tallied {
  private Tallied() {}

  /** A plan of that week whose tally is nought but for one term. */
  public static WeekPlan of(Brief brief, int term, long amount) {
    long[] tally = new long[Tally.SIZE];
    tally[term] = amount;
    return new WeekPlan(Floor.of(brief), new LinePlan[0], tally, new int[0]);
  }
}
