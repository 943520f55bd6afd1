package spangle.intake.drawing;

import org.jspecify.annotations.Nullable;
import spangle.intake.problem.Place;
import spangle.intake.source.UnreadableException;

/** Reads a DXF file pair by pair; any line end will do. */
final class Tags {
  private static final int LONGEST_VALUE = 4_000;

  private final String file;
  private final String text;
  private int at;
  private int line = 1;
  private boolean cutOff;
  private @Nullable Tag pushed;

  Tags(String file, String text) {
    this.file = file;
    this.text = text;
  }

  /** The next pair; null at the end of the file. Comments (999) are passed over. */
  @Nullable Tag next() throws UnreadableException {
    Tag back = pushed;
    if (back != null) {
      pushed = null;
      return back;
    }
    while (true) {
      int codeLine = line;
      String code = read();
      if (code == null || (code.isEmpty() && blankToTheEnd())) {
        return null;
      }
      int number = code(code, codeLine);
      String value = read();
      if (value == null) {
        cutOff = true;
        return null;
      }
      if (number != 999) {
        return new Tag(number, value, codeLine);
      }
    }
  }

  void push(Tag tag) {
    pushed = tag;
  }

  /** Whether the file ended between a code and its value. */
  boolean cutOff() {
    return cutOff;
  }

  private boolean blankToTheEnd() {
    for (int i = at; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c > ' ' && c != 0x1A) {
        return false;
      }
    }
    return true;
  }

  private int code(String text, int codeLine) throws UnreadableException {
    if (text.length() <= 5) {
      try {
        return Integer.parseInt(text);
      } catch (NumberFormatException noNumber) {
        throw broken(text, codeLine);
      }
    }
    throw broken(text, codeLine);
  }

  private UnreadableException broken(String text, int codeLine) {
    String shown = text.length() <= 40 ? text : text.substring(0, 37) + "...";
    return UnreadableException.grammar(
        Place.at(file, codeLine, 0),
        "a group code should stand here, not '" + shown + "': the file is no DXF or is damaged",
        "export the drawing again as ASCII DXF");
  }

  private @Nullable String read() {
    if (at >= text.length()) {
      return null;
    }
    int start = at;
    while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
    int end = Math.min(at, start + LONGEST_VALUE);
    if (at < text.length()) {
      boolean crlf =
          text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
      at += crlf ? 2 : 1;
    }
    line++;
    return text.substring(start, end).strip();
  }
}
