package spangle.intake.read;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import spangle.intake.week.Route;

/**
 * The words people use for a way through the shop. A word that may mean two ways ({@code paint},
 * {@code plated}) is none of them.
 */
final class RouteWords {
  private static final String ZINC =
      "(?:(?:hot[ -]?dip(?:ped)?[ -]?)?(?:galv\\.?|galvani[sz](?:e|ed|ing))"
          + "|hot[ -]?dip(?:ped)?(?:[ -]zinc)?|hdg|zinc|feuerverzink(?:en|t))";
  private static final String POWDER =
      "(?:powder(?:[ -]?(?:coat|coated|coating|paint))?|p\\.?/?c\\.?|pulver(?:n|beschichte[nt])?)";
  private static final String AND = "\\s*(?:\\+|&|,|/|and|then|und)\\s*";

  private static final Map<Route, Pattern> PATTERNS = patterns();

  private RouteWords() {}

  private static Map<Route, Pattern> patterns() {
    Map<Route, Pattern> patterns = new LinkedHashMap<>();
    put(patterns, Route.ZINC, ZINC + "(?: only)?");
    put(patterns, Route.POWDER, POWDER + "(?: only)?");
    put(
        patterns,
        Route.LIQUID,
        "(?:liquid|wet)(?:[ -](?:paint|painted|painting|spray|sprayed|coat))?|(?:2|two)[ -]?pack");
    put(
        patterns,
        Route.TWO_COAT,
        "(?:2|two)[ -]?coats?(?: "
            + POWDER
            + ")?|"
            + POWDER
            + " (?:2|two)[ -]?coats?|primer"
            + AND
            + POWDER);
    put(patterns, Route.DUPLEX, "duplex|" + ZINC + AND + POWDER);
    return patterns;
  }

  private static void put(Map<Route, Pattern> patterns, Route route, String words) {
    patterns.put(route, Pattern.compile(words));
  }

  /** The way meant; empty where the words mean none, or two. */
  static Optional<Route> find(String text) {
    String words = text.strip().toLowerCase(Locale.ROOT).replace('_', '-').replaceAll("\\s+", " ");
    if (words.isEmpty() || words.length() > 60) {
      return Optional.empty();
    }
    return PATTERNS.entrySet().stream()
        .filter(way -> way.getValue().matcher(words).matches())
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
