package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.measure.Box;
import spangle.measure.Figures;

/** What can be done with a part that does not go in. */
final class WaysOut {
  private static final int MOST_PIECES = 8;

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
      words.add("Missing: " + missing(nearest.margin()) + "; take off whatever can be detached");
      split(request, way).ifPresent(words::add);
      words.add(
          (request.rules().twoDips() ? "A kettle" : "A room")
              + " that takes it straight: usable "
              + needed(request.body().box(), way));
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

  private static String missing(Margin margin) {
    List<String> sides = new ArrayList<>();
    add(sides, margin.lengthMm(), "length");
    add(sides, margin.widthMm(), "width");
    add(sides, margin.depthMm(), "depth");
    return String.join(", ", sides);
  }

  private static void add(List<String> sides, double marginMm, String side) {
    if (marginMm < 0) {
      sides.add(Figures.upTo(-marginMm, 1) + " mm of " + side);
    }
  }

  /** The fewest equal pieces, cut square to one side, that go in whole. */
  private static Optional<String> split(FitRequest request, KettleWay way) {
    Box box = request.body().box();
    for (int pieces = 2; pieces <= MOST_PIECES; pieces++) {
      double[] sides = {box.longestMm(), box.middleMm(), box.shortestMm()};
      for (int cut = 0; cut < 3; cut++) {
        double whole = sides[cut];
        double[] piece = sides.clone();
        piece[cut] = whole / pieces;
        Optional<Attitude> fits =
            WholeFit.best(
                Body.of(new Box(piece[0], piece[1], piece[2])), way.tightest(), request.rules());
        if (fits.isPresent()) {
          return Optional.of(
              "Split it in "
                  + pieces
                  + " across its "
                  + Figures.upTo(whole, 1)
                  + " mm side: pieces up to "
                  + Figures.upTo(largestCutMm(sides, cut, request, way), 0)
                  + " mm go in whole; bolt or weld and repair the zinc after");
        }
      }
    }
    return Optional.empty();
  }

  private static double largestCutMm(double[] sides, int cut, FitRequest request, KettleWay way) {
    double fits = 0;
    double fails = sides[cut];
    double[] piece = sides.clone();
    for (int i = 0; i < 40; i++) {
      double middle = (fits + fails) / 2;
      piece[cut] = middle;
      if (WholeFit.best(
              Body.of(new Box(piece[0], piece[1], piece[2])), way.tightest(), request.rules())
          .isPresent()) {
        fits = middle;
      } else {
        fails = middle;
      }
    }
    return Math.floor(fits);
  }

  /** The straight lay that asks for the least beyond what is there. */
  private static String needed(Box box, KettleWay way) {
    Shortage level = Shortage.level(Body.of(box), way.tightest());
    Silhouette side = level.lay().side();
    return Figures.upTo(side.alongMm(level.tiltDeg()), 0)
        + " x "
        + Figures.upTo(level.lay().acrossMm(), 0)
        + " x "
        + Figures.upTo(side.uprightMm(level.tiltDeg()), 0)
        + " mm (length x width x depth)";
  }
}
