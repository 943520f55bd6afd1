package spangle.intake.week;

/**
 * Somebody's word for a check.
 *
 * @param by who, by role or name
 * @param at when, as written; may be empty
 */
public record Signature(String by, String at) {}
