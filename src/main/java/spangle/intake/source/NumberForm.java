package spangle.intake.source;

import java.util.Locale;

/**
 * What a number format (ECMA-376 Part 1, 18.8.31) says beside the digits: a number stored as 3 and
 * shown as "3 mm" has its unit in the format alone.
 *
 * @param percent whether hundredths are shown
 * @param unit words behind the digits; may be empty
 * @param leastDigits noughts are put in front up to so many; 0 where none are
 */
record NumberForm(boolean percent, String unit, int leastDigits) {
  /** Nothing beside the digits. */
  static final NumberForm PLAIN = new NumberForm(false, "", 0);

  private static final String NOUGHTS = "0{2,15}";

  static NumberForm of(String format) {
    StringBuilder digits = new StringBuilder();
    StringBuilder behind = new StringBuilder();
    boolean percent = false;
    String f = format.replaceFirst("(?i)general", "#");
    for (int i = 0; i < f.length() && f.charAt(i) != ';'; i++) {
      char c = f.charAt(i);
      switch (c) {
        case '"' -> {
          int end = f.indexOf('"', i + 1);
          end = end < 0 ? f.length() : end;
          behind.append(f, i + 1, end);
          i = end;
        }
        case '\\' -> behind.append(f, Math.min(++i, f.length()), Math.min(i + 1, f.length()));
        case '_', '*' -> i++;
        case '[' -> i = Math.max(i, f.indexOf(']', i));
        case '%' -> percent = true;
        case '0', '#', '?' -> {
          digits.append(c);
          behind.setLength(0);
        }
        case ' ' -> behind.append(c);
        default -> digits.append(c);
      }
    }
    String unit = behind.toString().strip();
    boolean says = !digits.isEmpty() && unit.codePoints().anyMatch(NumberForm::isOfUnit);
    return new NumberForm(
        percent, says ? unit : "", digits.toString().matches(NOUGHTS) ? digits.length() : 0);
  }

  private static boolean isOfUnit(int c) {
    return Character.isLetter(c) || c == '"' || c == '\'';
  }

  /** The number as it is shown, all its digits kept. */
  String words(String plain) {
    if (!unit.isEmpty()) {
      // Three decimals behind a point must not read as thousands.
      return (plain.matches("-?[0-9]+\\.[0-9]{3}") ? plain + "0" : plain) + " " + unit;
    }
    return plain.matches("[0-9]+") && plain.length() < leastDigits
        ? String.format(Locale.ROOT, "%0" + leastDigits + "d", Long.parseLong(plain))
        : plain;
  }
}
