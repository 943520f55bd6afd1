package spangle.desk;

import java.util.Locale;
import java.util.stream.Collectors;
import spangle.fit.FitAnswer;
import spangle.fit.Verdict;

/** A fit answer in words for sheets. */
final class FitWording {
  private FitWording() {}

  static String verdict(Verdict verdict) {
    return switch (verdict) {
      case STRAIGHT -> "straight";
      case TILTED -> "tilted";
      case TWO_DIPS -> "two dips";
      case NO -> "no";
    };
  }

  /** How it hangs. */
  static String attitude(FitAnswer answer) {
    return switch (answer.verdict()) {
      case STRAIGHT ->
          answer.rules().twoDips()
              ? "goes in straight; hang at an angle that drains"
              : "goes in straight";
      case TILTED ->
          "tilted "
              + windows(answer)
              + answer
                  .rollDeg()
                  .map(
                      r ->
                          String.format(
                              Locale.ROOT,
                              ", rolled sideways %.1f to %.1f degrees",
                              r.min(),
                              r.max()))
                  .orElse("");
      case TWO_DIPS ->
          String.format(
              Locale.ROOT,
              "two dips, %s, overlap %.0f mm",
              answer.twoDips().map(d -> d.form().words()).orElse(""),
              answer.overlapMm().orElse(0));
      case NO -> "does not go in";
    };
  }

  /** The whole answer in a sentence. */
  static String sentence(FitAnswer answer) {
    String margin =
        String.format(
            Locale.ROOT,
            "margins %.0f mm along, %.0f mm across, %.0f mm deep",
            answer.margin().lengthMm(),
            answer.margin().widthMm(),
            answer.margin().depthMm());
    String limit = answer.limitedBy().map(l -> "; limited by " + l).orElse("");
    String ways = answer.waysOut().isEmpty() ? "" : "; " + String.join("; ", answer.waysOut());
    return attitude(answer) + "; " + margin + limit + ways;
  }

  private static String windows(FitAnswer answer) {
    return answer.tiltWindowsDeg().stream()
        .map(w -> String.format(Locale.ROOT, "%.1f to %.1f degrees", w.min(), w.max()))
        .collect(Collectors.joining(" or "));
  }
}
