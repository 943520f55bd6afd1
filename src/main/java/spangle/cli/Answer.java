package spangle.cli;

import java.io.PrintWriter;
import java.util.Locale;
import spangle.measure.LowLikelyHigh;

/** An answer for the eye: a word in the margin, then one line. */
final class Answer {
  private static final String MARGIN = "          ";
  private static final double LB_PER_KG = 1 / 0.45359237;
  private static final double FT2_PER_M2 = 1 / 0.09290304;
  private static final double MM_PER_MIL = 0.0254;

  /** Said beside every safety figure. */
  static final String AUTHORITY = "shown, not certified: local code and the equipment maker decide";

  private final PrintWriter out;

  Answer(PrintWriter out) {
    this.out = out;
  }

  /** A line with its word; a line that follows under the same word has none. */
  Answer line(String word, String format, Object... values) {
    String text = String.format(Locale.ROOT, format, values);
    out.print((word + MARGIN).substring(0, Math.max(MARGIN.length(), word.length() + 1)));
    out.print(text);
    out.print('\n');
    return this;
  }

  /** A sentence as it is. */
  Answer say(String word, String sentence) {
    return line(word, "%s", sentence);
  }

  void end() {
    out.flush();
  }

  static double lb(double kg) {
    return kg * LB_PER_KG;
  }

  static double ft2(double m2) {
    return m2 * FT2_PER_M2;
  }

  static double mil(double um) {
    return um / 1000 / MM_PER_MIL;
  }

  static double fahrenheit(double celsius) {
    return celsius * 9 / 5 + 32;
  }

  static String kg(LowLikelyHigh range) {
    return String.format(
        Locale.ROOT,
        "%.2f kg likely, %.2f to %.2f (%.1f lb)",
        range.likely(),
        range.low(),
        range.high(),
        lb(range.likely()));
  }
}
