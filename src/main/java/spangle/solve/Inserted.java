package spangle.solve;

import spangle.plan.Plan;

/**
 * A plan into which new lots were put.
 *
 * @param plan the whole plan
 * @param endMin when the last of the new lots is finished
 */
public record Inserted(Plan plan, int endMin) {}
