package spangle.intake.read;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Hollow sections, channels and angles as cut lists name them, without the word section. */
final class SectionNames {
  private static final int SIDES_AND_WALL = 3;
  private static final String MARK = "(hf ?shs|hf ?rhs|shs|rhs|chs|upn|upe|l)";
  private static final String SIZES =
      "([0-9]+(?:[.,][0-9]+)?(?:\\s*[x\u00d7*]\\s*[0-9]+(?:[.,][0-9]+)?)*)";
  private static final String LENGTH =
      "(?:\\s*[x\u00d7*,@-]\\s*|\\s+)(?:l ?= ?|length )?([0-9]+(?:[.,][0-9]+)?\\s*(?:mm|cm|m|in|ft|\"|')?)(?: ?(?:long|lg|length))?";
  private static final Pattern MARK_FIRST = Pattern.compile(MARK + "\\s*" + SIZES + LENGTH);
  private static final Pattern SIZES_FIRST = Pattern.compile(SIZES + "\\s*" + MARK + LENGTH);

  private SectionNames() {}

  /** The words as this program spells them; anything else as it was. */
  static String spelled(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Matcher first = MARK_FIRST.matcher(plain);
    if (first.matches() && whole(first.group(1), first.group(2))) {
      return section(first.group(1), first.group(2), first.group(3));
    }
    Matcher last = SIZES_FIRST.matcher(plain);
    return last.matches() && whole(last.group(2), last.group(1))
        ? section(last.group(2), last.group(1), last.group(3))
        : text;
  }

  /** Whether the sizes are all a section has: then what follows is a length and not its wall. */
  private static boolean whole(String mark, String sizes) {
    String[] sides = sizes.split("[x\u00d7*]", -1);
    int most =
        switch (mark) {
          case "upn", "upe" -> 1;
          case "chs" -> 2;
          default -> SIDES_AND_WALL;
        };
    boolean oneSide = mark.equals("l") || mark.endsWith("shs");
    return sides.length == most
        || (oneSide && sides.length == 2 && 2 * number(sides[1]) < number(sides[0]));
  }

  private static double number(String side) {
    return Double.parseDouble(side.strip().replace(',', '.'));
  }

  private static String section(String mark, String sizes, String length) {
    return "section " + (mark + sizes).replaceAll("\\s", "") + " x " + length.strip();
  }
}
