/**
 * The drawing a hanger works from: every piece in its place, told apart by hatch and letter, with
 * the rows in words. Draws what a pattern says; decides nothing.
 */
@org.jspecify.annotations.NullMarked
package spangle.report.hangsheet;
