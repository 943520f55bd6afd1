package spangle.intake.source;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds what somebody probably meant. */
public final class Near {
  private Near() {}

  /** The known word nearest to a mistyped one, if any is near enough. */
  public static Optional<String> to(String typed, Collection<String> known) {
    if (typed.length() > 60) {
      return Optional.empty();
    }
    String lower = typed.toLowerCase(Locale.ROOT);
    String best = "";
    int bestDistance = Integer.MAX_VALUE;
    for (String word : known) {
      int distance = distance(lower, word.toLowerCase(Locale.ROOT));
      if (distance < bestDistance) {
        bestDistance = distance;
        best = word;
      }
    }
    int allowed = Math.max(1, Math.min(3, typed.length() / 3));
    return bestDistance <= allowed ? Optional.of(best) : Optional.empty();
  }

  /** As an addition to a sentence: {@code ; did you mean 'qty'?} or nothing. */
  public static String hint(String typed, Collection<String> known) {
    return to(typed, known).map(w -> "; did you mean '" + w + "'?").orElse("");
  }

  /** Letters added, dropped, changed or swapped with their neighbour. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
