package spangle.fit;

import java.util.Optional;
import spangle.measure.Box;
import spangle.measure.Figures;

/** Into how many pieces a part has to be cut so that every piece goes in whole. */
final class Splits {
  /** More pieces by cuts across one side nobody would join again. */
  private static final int MOST_PIECES = 8;

  /** The same of cuts across two sides: six by six. */
  private static final int MOST_BOTH_WAYS = 36;

  /** Of the longest part (a kilometre) these leave less than a thousandth of a millimetre. */
  private static final int HALVINGS = 40;

  private final FitRequest request;
  private final UsableSpace space;
  private final double[] sidesMm;
  private final boolean round;

  private Splits(FitRequest request, KettleWay way) {
    this.request = request;
    this.space = way.tightest();
    this.round = request.body().round();
    Box box = request.body().box();
    // A round part is cut along its axis only, which its box names first.
    this.sidesMm =
        round
            ? new double[] {box.lengthMm(), box.widthMm(), box.heightMm()}
            : new double[] {box.longestMm(), box.middleMm(), box.shortestMm()};
  }

  /** The fewest equal pieces, in words; empty where no reasonable number does. */
  static Optional<String> words(FitRequest request, KettleWay way) {
    Splits splits = new Splits(request, way);
    return splits.oneWay().or(splits::bothWays);
  }

  private Optional<String> oneWay() {
    for (int pieces = 2; pieces <= MOST_PIECES; pieces++) {
      for (int cut = 0; cut < (round ? 1 : 3); cut++) {
        double[] piece = sidesMm.clone();
        piece[cut] = sidesMm[cut] / pieces;
        if (goesIn(piece)) {
          return Optional.of(
              "Split it in "
                  + pieces
                  + " across its "
                  + Figures.upTo(sidesMm[cut], 1)
                  + " mm side: pieces up to "
                  + Figures.upTo(largestMm(cut), 0)
                  + " mm go in whole; "
                  + after());
        }
      }
    }
    return Optional.empty();
  }

  /** Cuts across two sides, the fewest pieces first. */
  private Optional<String> bothWays() {
    if (round) {
      return Optional.empty();
    }
    int[][] pairs = {{0, 1}, {0, 2}, {1, 2}};
    for (int pieces = 4; pieces <= MOST_BOTH_WAYS; pieces++) {
      for (int one = 2; one <= pieces / 2; one++) {
        int other = pieces / one;
        if (one * other != pieces) {
          continue;
        }
        for (int[] pair : pairs) {
          double[] piece = sidesMm.clone();
          piece[pair[0]] = sidesMm[pair[0]] / one;
          piece[pair[1]] = sidesMm[pair[1]] / other;
          if (goesIn(piece)) {
            return Optional.of(
                "Split it in "
                    + pieces
                    + ": "
                    + one
                    + " across its "
                    + Figures.upTo(sidesMm[pair[0]], 1)
                    + " mm side and "
                    + other
                    + " across its "
                    + Figures.upTo(sidesMm[pair[1]], 1)
                    + " mm side; such pieces go in whole; "
                    + after());
          }
        }
      }
    }
    return Optional.empty();
  }

  private String after() {
    return request.rules().twoDips() ? "bolt or weld and repair the zinc after" : "join them after";
  }

  private boolean goesIn(double[] piece) {
    Body body =
        round ? Body.cylinder(piece[1], piece[0]) : Body.of(new Box(piece[0], piece[1], piece[2]));
    return WholeFit.best(body, space, request.rules()).isPresent();
  }

  private double largestMm(int cut) {
    double fits = 0;
    double fails = sidesMm[cut];
    double[] piece = sidesMm.clone();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (fits + fails) / 2;
      piece[cut] = middle;
      if (goesIn(piece)) {
        fits = middle;
      } else {
        fails = middle;
      }
    }
    return Math.floor(fits + 1e-6);
  }
}
