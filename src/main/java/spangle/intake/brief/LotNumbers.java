package spangle.intake.brief;

import java.util.ArrayList;
import java.util.List;

/** Hands out numbers of lots, so that the same pieces keep the number people know them by. */
final class LotNumbers {
  private final List<Standing.Chain> known;
  private int last;

  LotNumbers(List<Standing.Chain> known, int last) {
    this.known = new ArrayList<>(known);
    this.last = last;
  }

  /** A number for a lot of so many pieces. */
  int next(int pieces, int readyMin) {
    Standing.Chain best = null;
    for (Standing.Chain chain : known) {
      boolean sooner =
          best == null
              || (best.lots().get(0).readyMin() != readyMin
                  && chain.lots().get(0).readyMin() == readyMin);
      if (chain.pieces() == pieces && sooner) {
        best = chain;
      }
    }
    if (best == null) {
      return ++last;
    }
    known.remove(best);
    return best.number();
  }
}
