package spangle.report;

/**
 * How near the plan is to what no plan can beat.
 *
 * @param name what is counted: "oven hours"
 * @param ours what the plan takes
 * @param noPlanFewerThan proven floor
 */
public record Bound(String name, double ours, double noPlanFewerThan) {}
