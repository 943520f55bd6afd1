package spangle.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Plain numbers as people write them: a decimal point or a decimal comma, and trade fractions such
 * as {@code 5/8} or {@code 2 1/2}. Thousands separators are refused, because 1,250 means two
 * things.
 */
public final class Numbers {
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)(?:[eE][+-]?[0-9]{1,3})?");
  private static final Pattern THOUSANDS = Pattern.compile("[+-]?[1-9][0-9]{0,2}(?:,[0-9]{3})+");
  private static final Pattern FRACTION =
      Pattern.compile("(?:([0-9]{1,6})[ -])?([0-9]{1,6})/([0-9]{1,6})");

  private Numbers() {}

  /**
   * Reads one number without a unit.
   *
   * @throws MeasureException when the text is no number, is not finite, or may be read two ways
   */
  public static double parse(String text) {
    String trimmed = text.strip();
    Matcher fraction = FRACTION.matcher(trimmed);
    if (fraction.matches()) {
      return fraction(text, fraction);
    }
    if (THOUSANDS.matcher(trimmed).matches()) {
      throw new MeasureException(
          text,
          "a clear number",
          "a comma before three digits may mean thousands or decimals; write it without the comma or with a point");
    }
    if (!DECIMAL.matcher(trimmed).matches()) {
      throw new MeasureException(
          text, "a number", "write digits with at most one decimal point or comma");
    }
    double number = Double.parseDouble(trimmed.replace(',', '.'));
    if (Double.isInfinite(number)) {
      throw new MeasureException(text, "a number of this world", "check the exponent");
    }
    return number;
  }

  private static double fraction(String text, Matcher fraction) {
    double below = Double.parseDouble(fraction.group(3));
    if (below == 0) {
      throw new MeasureException(text, "a number", "a fraction cannot be over zero");
    }
    double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
    return whole + Double.parseDouble(fraction.group(2)) / below;
  }
}
