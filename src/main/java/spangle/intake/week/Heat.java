package spangle.intake.week;

import java.util.OptionalDouble;

/**
 * What heat does to a piece.
 *
 * @param sensitive whether something in it may not become hot
 * @param what what that is, in words; may be empty
 * @param limitC warmest it may become, where given, C
 */
public record Heat(Told sensitive, String what, OptionalDouble limitC) {}
