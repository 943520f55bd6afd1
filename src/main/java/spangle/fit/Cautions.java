package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.measure.Figures;
import spangle.measure.Interval;

/** The sentences that go with an answer. */
final class Cautions {
  private Cautions() {}

  static List<String> whole(Attitude attitude, FitRules rules) {
    List<String> words = new ArrayList<>();
    Interval drain = rules.drainDeg();
    double stretch = attitude.widestWithin(drain).map(Interval::width).orElse(-1.0);
    if (rules.twoDips() && attitude.tiltDeg().intersect(drain).isEmpty()) {
      words.add(
          stretch < 0
              ? "Drains badly: no angle between "
                  + deg(drain.min())
                  + " and "
                  + deg(drain.max())
                  + " degrees goes in; expect runs, ash lines and thick edges below"
              : "Drains badly at the reported angles; it also goes in between "
                  + deg(attitude.widestWithin(drain).orElseThrow().min())
                  + " and "
                  + deg(attitude.widestWithin(drain).orElseThrow().max())
                  + " degrees: hang it there");
    }
    if (!attitude.straight() && attitude.tiltDeg().width() < FitRules.NARROW_DEG) {
      words.add(
          "Only "
              + Figures.fixed(attitude.tiltDeg().width(), 2)
              + " degrees of angle to spare: hang by measured slings and try it cold");
    } else if (attitude.straight()
        && rules.twoDips()
        && attitude.tiltDeg().width() < FitRules.NARROW_DEG) {
      words.add(
          "Goes in straight with only "
              + Figures.fixed(attitude.tiltDeg().width(), 2)
              + " degrees of angle to spare");
    }
    attitude
        .rollDeg()
        .ifPresent(
            roll ->
                words.add(
                    "Goes in only rolled sideways by "
                        + deg(roll.min())
                        + " to "
                        + deg(roll.max())
                        + " degrees: it needs its own slings and a trial lift"));
    return words;
  }

  static List<String> twoDips(TwoDips dips, double freeEndMm) {
    List<String> words = new ArrayList<>();
    words.add(
        "Two dips leave a visible band and a duller, thicker second half; say so to the customer");
    words.add("Two dips distort more than one; the part is heated unevenly");
    if (dips.form() == TwoDips.Form.END_OUT) {
      words.add(
          "The free end stands "
              + Figures.fixed(freeEndMm, 0)
              + " mm above the rim: keep people clear and hold it while the other end is in zinc");
      words.add("Every hollow needs vents and drains for both attitudes");
    } else {
      words.add("Every hollow needs vents and drains for both ways up");
    }
    return words;
  }

  static String hookLowersTheAngle(
      KettleWay way, FitRules rules, double wantedDeg, double hangDeg) {
    Interval drain = rules.drainDeg();
    boolean drains = hangDeg >= drain.min() && hangDeg <= drain.max();
    return "The hook of "
        + way.crane().map(Crane::name).orElse("the crane")
        + " is too low for "
        + deg(wantedDeg)
        + " degrees: hang at "
        + deg(hangDeg)
        + (drains ? "" : ", where zinc runs off badly");
  }

  static List<String> lift(FitRequest request, KettleWay way, Optional<Lift> lift) {
    List<String> words = new ArrayList<>();
    if (!request.rules().twoDips()) {
      return words;
    }
    if (way.kettleOnly()) {
      words.add("Only the kettle was checked: pickle, flux, dryer and crane may be smaller");
    }
    if (request.massKg().isEmpty()) {
      words.add("Mass not known: no dip sheet without it");
    } else if (lift.isPresent() && lift.get().massMarginKg().orElse(0) < 0) {
      words.add(
          "Too heavy for "
              + lift.get().crane().name()
              + ": "
              + Figures.fixed(lift.get().massKg().orElse(0), 0)
              + " kg with jig and draining zinc, "
              + Figures.fixed(lift.get().crane().massKg(), 0)
              + " kg allowed");
    }
    if (lift.isPresent() && lift.get().hookMarginMm() < 0) {
      words.add(
          "The hook of "
              + lift.get().crane().name()
              + " must stand "
              + Figures.fixed(lift.get().hookMm(), 0)
              + " mm above the rim and reaches "
              + Figures.fixed(lift.get().crane().hookAboveRimMm(), 0));
    }
    return words;
  }

  private static String deg(double value) {
    return Figures.fixed(value, 1);
  }
}
