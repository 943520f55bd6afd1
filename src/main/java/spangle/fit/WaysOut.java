package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.measure.Figures;

/** What can be done with a part that does not go in. */
final class WaysOut {
  private WaysOut() {}

  static List<String> of(
      FitRequest request,
      KettleWay way,
      Shortage nearest,
      List<UsableSpace> others,
      Optional<Lift> lift) {
    List<String> words = new ArrayList<>();
    heavy(request, way, lift).ifPresent(words::add);
    if (nearest.margin().worstShortageMm() > 0) {
      words.add(
          "Missing"
              + at(nearest.tiltDeg())
              + ": "
              + missing(request, nearest.margin())
              + "; take off whatever can be detached");
      twoDips(request, way, nearest).ifPresent(words::add);
      Splits.words(request, way).ifPresent(words::add);
      words.add(
          (request.rules().twoDips() ? "A kettle" : "A room")
              + " that takes it straight: usable "
              + needed(request, way));
    }
    others.stream()
        .filter(other -> KettleFit.answer(request, KettleWay.bare(other)).verdict() != Verdict.NO)
        .forEach(
            other ->
                words.add(
                    "It goes into "
                        + other.name()
                        + ": "
                        + KettleFit.answer(request, KettleWay.bare(other)).verdict().code()));
    if (request.rules().twoDips()) {
      words.add("Paint it instead: ask the customer");
    }
    return words;
  }

  private static Optional<String> heavy(FitRequest request, KettleWay way, Optional<Lift> lift) {
    if (request.massKg().isEmpty()) {
      return Optional.empty();
    }
    double most =
        way.stations().stream().mapToDouble(Station::maxMassKg).min().orElse(0) - request.jigKg();
    double byCrane =
        lift.map(l -> (l.crane().massKg() - request.jigKg()) / (1 + Crane.DRAINING_ZINC_SHARE))
            .orElse(Double.POSITIVE_INFINITY);
    double bears = Math.min(most, byCrane);
    return request.massKg().getAsDouble() > bears
        ? Optional.of(
            "Too heavy: at most "
                + Figures.fixed(Math.max(0, Math.floor(bears + 1e-6)), 0)
                + " kg of work in one lift; take it apart or hang fewer pieces")
        : Optional.empty();
  }

  private static String at(double deg) {
    return deg == 0 || deg == 90 ? "" : " at " + Figures.fixed(deg, 1) + " degrees";
  }

  /** What two dips lack, where that is less than what one lacks. */
  private static Optional<String> twoDips(FitRequest request, KettleWay way, Shortage nearest) {
    if (!request.rules().twoDips()) {
      return Optional.empty();
    }
    TwoDipShortage dips =
        TwoDipShortage.of(request.body().box(), way.kettle(), request.rules().overlapMm());
    double shortage = dips.margin().worstShortageMm();
    return shortage > 0 && shortage < nearest.margin().worstShortageMm()
        ? Optional.of(
            "Missing for two dips, "
                + dips.form().words()
                + at(dips.tiltDeg())
                + ": "
                + missing(request, dips.margin()))
        : Optional.empty();
  }

  private static String missing(FitRequest request, Margin margin) {
    List<String> sides = new ArrayList<>();
    add(sides, margin.lengthMm(), "length");
    add(sides, margin.widthMm(), "width");
    add(sides, margin.depthMm(), request.rules().upright());
    return String.join(", ", sides);
  }

  private static void add(List<String> sides, double marginMm, String side) {
    if (marginMm < 0) {
      sides.add(Figures.upTo(-marginMm, 1) + " mm of " + side);
    }
  }

  /** The straight lay that asks for the least beyond what is there. */
  private static String needed(FitRequest request, KettleWay way) {
    Shortage level = Shortage.level(Body.of(request.body().box()), way.tightest());
    Silhouette side = level.lay().side();
    return Figures.upTo(side.alongMm(level.tiltDeg()), 0)
        + " x "
        + Figures.upTo(level.lay().acrossMm(), 0)
        + " x "
        + Figures.upTo(side.uprightMm(level.tiltDeg()), 0)
        + " mm (length x width x "
        + request.rules().upright()
        + ")";
  }
}
