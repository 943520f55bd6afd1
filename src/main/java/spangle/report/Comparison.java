package spangle.report;

/**
 * The plan beside one made by simple rules, as by hand.
 *
 * @param name what is counted
 * @param byHand what the simple rules come to
 * @param plan what the plan comes to
 */
public record Comparison(String name, double byHand, double plan) {}
