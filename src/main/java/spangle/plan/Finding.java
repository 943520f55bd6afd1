package spangle.plan;

/**
 * What the audit says of a plan.
 *
 * @param rule stable name of the rule that does not hold
 * @param subject load, lot, batch or station it concerns
 * @param words what is wrong, with value and limit
 */
public record Finding(String rule, String subject, String words) {}
