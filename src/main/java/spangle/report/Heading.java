package spangle.report;

import java.util.OptionalInt;

/**
 * What stands at the head of every sheet.
 *
 * @param shop the shop's name
 * @param version letter of the plan, "A" for the first; a reprint after a change gets the next
 * @param nowMin minute of the week the sheets are made for; empty before the week begins
 * @param frozenUntilMin up to here the plan is not changed any more; 0 where nothing is frozen
 * @param decimalComma true for 1,5 instead of 1.5
 */
public record Heading(
    String shop, String version, OptionalInt nowMin, int frozenUntilMin, boolean decimalComma) {
  /** A first version, before the week, with the decimal point. */
  public static Heading plain(String shop) {
    return new Heading(shop, "A", OptionalInt.empty(), 0, false);
  }
}
