package spangle.intake.copy;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers and texts as cells of the clean table. */
final class Plain {
  /** Enough for any measured figure, and few enough that writing again changes nothing. */
  private static final MathContext DIGITS = new MathContext(12);

  private Plain() {}

  /** Digits with a point and without an exponent. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Text on one line. */
  static String line(String text) {
    return text.replaceAll("\\s*[\\r\\n]+\\s*", " ").strip();
  }
}
