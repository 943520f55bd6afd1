package spangle.report.week;

/** Text that can be shown: names come from files and may hold anything. */
public final class Printable {
  private Printable() {}

  /** Without control characters (a terminal would obey them) and marks that turn the reading. */
  public static String text(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().filter(Printable::keeps).forEach(out::appendCodePoint);
    return out.toString();
  }

  /** As {@link #text}, on one line. */
  public static String line(String text) {
    return text(text).replace('\n', ' ').replace('\t', ' ').strip();
  }

  private static boolean keeps(int c) {
    boolean control = (c < 0x20 && c != '\n' && c != '\t') || (c >= 0x7f && c < 0xa0);
    boolean turning = (c >= 0x202a && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069);
    boolean halfPair = c >= 0xd800 && c <= 0xdfff;
    return !control && !turning && !halfPair && c != 0xfffe && c != 0xffff;
  }
}
