package spangle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import spangle.fit.FitAnswer;
import spangle.fit.Lift;
import spangle.fit.Margin;
import spangle.fit.TwoDips;
import spangle.measure.Figures;
import spangle.measure.Interval;

/** The answer of fit as sentences and as data. */
final class FitWords {
  private FitWords() {}

  static void print(FitAnswer answer, PrintWriter out) {
    out.println(headline(answer));
    out.println(
        (answer.margin().worstShortageMm() > 0 ? "Usable less needed: " : "Margins: ")
            + margin(answer.margin()));
    if (answer.limitedBy().isPresent() && answer.verdict().whole()) {
      out.println("Limited by: " + answer.limitedBy().get());
    }
    list(out, "Way out: ", answer.waysOut());
    list(out, "Caution: ", answer.cautions());
    out.println(FitAnswer.VALIDITY);
    out.flush();
  }

  private static void list(PrintWriter out, String label, List<String> words) {
    words.forEach(word -> out.println(label + word));
  }

  static String headline(FitAnswer answer) {
    String across = mm(answer.acrossMm()) + " mm across";
    String verdict = answer.verdict().code().toUpperCase(Locale.ROOT);
    return switch (answer.verdict()) {
      case STRAIGHT, TILTED ->
          verdict
              + ": goes in whole, "
              + across
              + ", at "
              + windows(answer.tiltWindowsDeg())
              + answer.rollDeg().map(roll -> ", rolled " + range(roll)).orElse("")
              + "; hang at "
              + Figures.fixed(answer.hangDeg(), 0)
              + " degrees";
      case TWO_DIPS -> {
        TwoDips dips = answer.twoDips().orElseThrow();
        yield verdict
            + ": "
            + dips.form().words()
            + ", "
            + across
            + dips.dipTiltDeg().map(tilt -> ", at " + range(tilt)).orElse(", level")
            + "; overlap "
            + mm(dips.overlapMm())
            + " mm along the "
            + mm(dips.meetingSideMm())
            + " mm side";
      }
      case NO ->
          verdict
              + ": does not go in"
              + answer.limitedBy().map(name -> "; limited by " + name).orElse("");
    };
  }

  private static String windows(List<Interval> windows) {
    return String.join(" and ", windows.stream().map(FitWords::range).toList());
  }

  private static String range(Interval degrees) {
    return Figures.fixed(degrees.min(), 1) + " to " + Figures.fixed(degrees.max(), 1) + " degrees";
  }

  private static String margin(Margin margin) {
    return "length "
        + mm(margin.lengthMm())
        + " mm, width "
        + mm(margin.widthMm())
        + " mm, depth "
        + mm(margin.depthMm())
        + " mm";
  }

  private static String mm(double value) {
    return Figures.upTo(value, 1);
  }

  static JsonOut json(FitAnswer answer) {
    Margin margin = answer.margin();
    return new JsonOut()
        .put("verdict", answer.verdict().code())
        .put("across_mm", answer.acrossMm())
        .put("tilt_deg", answer.tiltDeg().orElse(null))
        .put("tilt_windows_deg", answer.tiltWindowsDeg())
        .put("roll_deg", answer.rollDeg().orElse(null))
        .put("dip_tilt_deg", answer.dipTiltDeg().orElse(null))
        .put("dips", answer.dips())
        .put("overlap_mm", answer.overlapMm().isPresent() ? answer.overlapMm().getAsDouble() : null)
        .put(
            "margin_mm",
            new JsonOut()
                .put("length", mmData(margin.lengthMm()))
                .put("width", mmData(margin.widthMm()))
                .put("depth", mmData(margin.depthMm())))
        .put("limited_by", answer.limitedBy().orElse(null))
        .put("cautions", answer.cautions())
        .put("two_dip_form", answer.twoDips().map(dips -> dips.form().words()).orElse(null))
        .put("hang_deg", answer.hangDeg())
        .put("hook_above_rim_mm", answer.lift().map(Lift::hookMm).orElse(null))
        .put("ways_out", answer.waysOut())
        .put("validity", FitAnswer.VALIDITY);
  }

  private static double mmData(double value) {
    return Figures.rounded(value, 6);
  }
}
