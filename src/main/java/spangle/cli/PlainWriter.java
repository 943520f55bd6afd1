package spangle.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * What a terminal shows and does not obey: names come from files of strangers and may hold control
 * characters or marks that turn the reading; those are left out. Lines, tabs and the return to the
 * start of a line stay.
 */
final class PlainWriter extends FilterWriter {
  PlainWriter(Writer to) {
    super(to);
  }

  @Override
  public void write(int c) throws IOException {
    if (shown((char) c)) {
      out.write(c);
    }
  }

  @Override
  public void write(char[] chars, int from, int length) throws IOException {
    write(new String(chars, from, length), 0, length);
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    int start = from;
    for (int i = from; i < from + length; i++) {
      if (!shown(text.charAt(i))) {
        out.write(text, start, i - start);
        start = i + 1;
      }
    }
    out.write(text, start, from + length - start);
  }

  private static boolean shown(char c) {
    boolean control = (c < 0x20 && c != '\n' && c != '\r' && c != '\t') || (c >= 0x7f && c < 0xa0);
    boolean turning = (c >= 0x202a && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069);
    return !control && !turning;
  }
}
