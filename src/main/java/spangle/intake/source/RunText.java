package spangle.intake.source;

import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;

/**
 * The text of a cell that may be written in several hands (ECMA-376 Part 1, 18.4.4). What is struck
 * out in it stays, between two tildes: a 10 struck out before a 12 must never become 1012.
 */
final class RunText {
  private static final String STRUCK = "~";

  private final StringBuilder text = new StringBuilder();
  private boolean inText;
  private boolean struck;
  private boolean inPhonetic;

  void clear() {
    text.setLength(0);
    inText = false;
    struck = false;
    inPhonetic = false;
  }

  void start(String element, Attributes attributes) {
    switch (element) {
      case "v", "t" -> {
        inText = !inPhonetic;
        text.append(inText && struck ? STRUCK : "");
      }
      case "r" -> struck = false;
      case "strike" -> struck = isOn(attributes.getValue("val"));
      case "rPh" -> inPhonetic = true;
      default -> inText = false;
    }
  }

  private static boolean isOn(@Nullable String value) {
    return value == null || value.equals("1") || value.equals("true");
  }

  void end(String element) {
    switch (element) {
      case "v", "t" -> {
        text.append(inText && struck ? STRUCK : "");
        inText = false;
      }
      case "r" -> struck = false;
      case "rPh" -> inPhonetic = false;
      default -> {
        // Other elements hold nothing that is read.
      }
    }
  }

  /** Takes characters, of which only those of a text count. */
  void add(char[] chars, int start, int length) throws SheetHandler.LimitException {
    if (inText) {
      append(text, chars, start, length);
    }
  }

  static void append(StringBuilder to, char[] chars, int start, int length)
      throws SheetHandler.LimitException {
    if (to.length() + length > Limits.VALUE_CHARS) {
      throw new SheetHandler.LimitException();
    }
    to.append(chars, start, length);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
