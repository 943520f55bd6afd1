package spangle.report.week;

import spangle.measure.Figures;

/**
 * Figures as the shop writes them.
 *
 * @param comma true for the decimal comma
 */
public record Say(boolean comma) {
  /** At most so many decimals, no trailing zeros. */
  public String number(double value, int decimals) {
    String text = Figures.upTo(value, decimals);
    return comma ? text.replace('.', ',') : text;
  }

  /** Exactly so many decimals. */
  public String fixed(double value, int decimals) {
    String text = Figures.fixed(value, decimals);
    return comma ? text.replace('.', ',') : text;
  }

  /**
   * A mass with as many decimals as a shop scale shows: {@code 0.35}, {@code 12.4}, {@code 310}.
   */
  public String mass(double kilograms) {
    return number(kilograms, kilograms < 5 ? 2 : kilograms < 100 ? 1 : 0);
  }

  /** An area: {@code 0.42}, {@code 12.4}, {@code 310}. */
  public String area(double squareMetres) {
    return mass(squareMetres);
  }

  /** A count with its noun: {@code 1 load}, {@code 2 loads}. */
  public static String count(long count, String noun) {
    return count + " " + (count == 1 ? noun : plural(noun));
  }

  /**
   * Words cut to a room, after a whole word, with three points at the end; a word longer than the
   * room is cut inside.
   *
   * @param words one line
   * @param room most characters, at least 4
   */
  public static String cut(String words, int room) {
    if (words.codePointCount(0, words.length()) <= room) {
      return words.strip();
    }
    int end = words.offsetByCodePoints(0, room - 3);
    int space = words.lastIndexOf(' ', end);
    String whole = words.substring(0, space > 0 ? space : end).strip();
    return whole.replaceFirst("[\\s,;:(.-]+$", "") + "...";
  }

  private static String plural(String noun) {
    return noun.endsWith("ch") ? noun + "es" : noun + "s";
  }
}
