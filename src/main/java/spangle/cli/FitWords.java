package spangle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import spangle.desk.PartFit;
import spangle.fit.FitAnswer;
import spangle.fit.Lift;
import spangle.fit.Margin;
import spangle.fit.TwoDips;
import spangle.fit.Verdict;
import spangle.fit.gate.GateOpening;
import spangle.fit.gate.GateState;
import spangle.fit.vent.HolePlace;
import spangle.fit.vent.Holes;
import spangle.measure.Figures;
import spangle.measure.Interval;

/** The answer of fit as sentences and as data. */
final class FitWords {
  /** Below this a range is told as one angle. */
  private static final double ONE_ANGLE_DEG = 0.05;

  private FitWords() {}

  static void print(FitAnswer answer, PrintWriter out, String validity) {
    body(answer, out);
    out.println(validity);
    out.flush();
  }

  /** A part of a week: the answer, its gates and holes, every station. */
  static void print(PartFit fit, PrintWriter out) {
    out.println(fit.job() + "/" + fit.part() + " " + fit.name());
    if (fit.shut()) {
      boolean gate = fit.gates().stream().anyMatch(GateState::isShut);
      out.println("NOT TO BE HUNG: " + (gate ? "a gate is shut" : "a question is open"));
    }
    body(fit.answer(), out);
    fit.gates().stream()
        .filter(g -> g.standing() != GateState.Standing.CLEAR)
        .forEach(
            g ->
                out.println("Gate " + g.line() + (g.isShut() ? "; opens with: " + g.opens() : "")));
    list(out, "Question ", fit.questions());
    for (PartFit.HollowHoles hollow : fit.hollows()) {
      out.println("Holes: " + hollow.count() + " x " + hollow.need().hollow().words());
      hollow.need().vent().ifPresent(h -> out.println("  vent  " + holes(h)));
      hollow.need().drain().ifPresent(h -> out.println("  drain " + holes(h)));
      hollow.places().forEach(p -> out.println("  " + p.words()));
    }
    out.println(
        "Stations: "
            + String.join(
                ", ",
                fit.stations().stream()
                    .map(s -> s.name() + " " + s.answer().verdict().code())
                    .toList()));
    out.println(fit.validity());
    out.flush();
  }

  static String holes(Holes holes) {
    return holes.asRuled().words()
        + " ("
        + holes.winner().rule()
        + "; or "
        + String.join(", ", holes.otherwise().stream().map(Holes.Choice::words).toList())
        + ")";
  }

  private static void body(FitAnswer answer, PrintWriter out) {
    out.println(headline(answer));
    out.println(
        (answer.margin().worstShortageMm() > 0 ? "Usable less needed: " : "Margins: ")
            + margin(answer));
    if (answer.limitedBy().isPresent() && answer.verdict() != Verdict.NO) {
      out.println("Limited by: " + answer.limitedBy().get());
    }
    list(out, "Way out: ", answer.waysOut());
    list(out, "Caution: ", answer.cautions());
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
              + (answer.rules().twoDips()
                  ? "; hang at " + Figures.upTo(answer.hangDeg(), 1) + " degrees"
                  : "");
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
    if (degrees.width() < ONE_ANGLE_DEG) {
      return Figures.fixed(degrees.middle(), 1) + " degrees only";
    }
    return Figures.fixed(degrees.min(), 1) + " to " + Figures.fixed(degrees.max(), 1) + " degrees";
  }

  private static String margin(FitAnswer answer) {
    Margin margin = answer.margin();
    return "length "
        + (answer.space().anyLength() ? "any" : mm(margin.lengthMm()) + " mm")
        + ", width "
        + mm(margin.widthMm())
        + " mm, "
        + answer.rules().upright()
        + " "
        + mm(margin.depthMm())
        + " mm";
  }

  private static String mm(double value) {
    return Figures.upTo(value, 1);
  }

  /** The same keys for a part of a week, with its gates, holes and stations beside them. */
  static JsonOut json(PartFit fit) {
    return json(fit.answer())
        .put("job", fit.job())
        .put("part", fit.part())
        .put("gates", fit.gates().stream().map(FitWords::json).toList())
        .put("questions", fit.questions())
        .put("holes", fit.hollows().stream().map(FitWords::json).toList())
        .put("stations", fit.stations().stream().map(FitWords::json).toList())
        .put("validity", fit.validity());
  }

  private static JsonOut json(GateState gate) {
    return new JsonOut()
        .put("gate", gate.gate().word())
        .put("state", gate.standing().word())
        .put("code", gate.code())
        .put("words", gate.words())
        .put("opens", gate.opens())
        .put("opened_by", gate.opening().map(GateOpening::by).orElse(List.of()))
        .put("at", gate.opening().map(GateOpening::at).orElse(null))
        .put("seen", gate.opening().map(GateOpening::seen).orElse(null));
  }

  private static JsonOut json(PartFit.HollowHoles hollow) {
    return new JsonOut()
        .put("count", hollow.count())
        .put("hollow", hollow.need().hollow().words())
        .put("length_mm", hollow.lengthMm())
        .put("vent", hollow.need().vent().map(VentWords::json).orElse(null))
        .put("drain", hollow.need().drain().map(VentWords::json).orElse(null))
        .put("places", hollow.places().stream().map(HolePlace::words).toList());
  }

  private static JsonOut json(PartFit.StationFit station) {
    return new JsonOut()
        .put("name", station.name())
        .put("verdict", station.answer().verdict().code())
        .put("margin_mm", margins(station.answer()));
  }

  private static JsonOut margins(FitAnswer answer) {
    Margin margin = answer.margin();
    return new JsonOut()
        .put("length", answer.space().anyLength() ? null : mmData(margin.lengthMm()))
        .put("width", mmData(margin.widthMm()))
        .put("depth", mmData(margin.depthMm()));
  }

  static JsonOut json(FitAnswer answer) {
    return new JsonOut()
        .put("verdict", answer.verdict().code())
        .put("across_mm", answer.acrossMm())
        .put("tilt_deg", answer.tiltDeg().orElse(null))
        .put("tilt_windows_deg", answer.tiltWindowsDeg())
        .put("roll_deg", answer.rollDeg().orElse(null))
        .put("dip_tilt_deg", answer.dipTiltDeg().orElse(null))
        .put("dips", answer.dips())
        .put("overlap_mm", answer.overlapMm().isPresent() ? answer.overlapMm().getAsDouble() : null)
        .put("margin_mm", margins(answer))
        .put("limited_by", answer.limitedBy().orElse(null))
        .put("cautions", answer.cautions())
        .put("two_dip_form", answer.twoDips().map(dips -> dips.form().words()).orElse(null))
        .put("hang_deg", answer.hangDeg())
        .put("hook_above_rim_mm", answer.lift().map(Lift::hookMm).orElse(null))
        .put("ways_out", answer.waysOut());
  }

  private static double mmData(double value) {
    return Figures.rounded(value, 6);
  }
}
