package spangle.report;

/**
 * How a coating is shown. The words always stand beside the colour: sheets are printed in black.
 *
 * @param materialId as in {@link spangle.plan.Finish#materialId()}
 * @param words the colour in words, such as "deep sea blue, satin"
 * @param code the shop's code for it
 * @param rgb six hexadecimal digits without the number sign
 */
public record Swatch(String materialId, String words, String code, String rgb) {
  /** Refuses anything but six hexadecimal digits. */
  public Swatch {
    if (!rgb.matches("[0-9a-fA-F]{6}")) {
      throw new IllegalArgumentException("a colour patch needs six hexadecimal digits: " + rgb);
    }
  }
}
