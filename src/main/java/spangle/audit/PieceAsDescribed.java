package spangle.audit;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPattern.HungPiece;

/** Pieces hang with the size they have, turned only where they may be. */
final class PieceAsDescribed extends Rule {
  PieceAsDescribed() {
    super(
        "piece-as-described",
        "Pieces hang with their own size, turned by a quarter only where the part allows it, and"
            + " stand no further off than the carrier has room.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : Hung.drawn(view)) {
      Map<String, HangItem> items = Hung.items(load);
      Set<String> said = new LinkedHashSet<>();
      for (HungPiece piece : Hung.pieces(load)) {
        HangItem item = items.get(piece.key());
        if (item != null) {
          check(load, piece, item, said);
        }
      }
      said.forEach(words -> findings.add(load.id(), words));
    }
  }

  private static void check(LoadView load, HungPiece piece, HangItem item, Set<String> said) {
    double acrossMm = piece.turned() ? item.dropMm() : item.acrossMm();
    double dropMm = piece.turned() ? item.acrossMm() : item.dropMm();
    if (differ(piece.widthMm(), acrossMm) || differ(piece.heightMm(), dropMm)) {
      said.add(
          Hung.at(piece)
              + " is drawn "
              + Words.number(piece.widthMm())
              + " x "
              + Words.number(piece.heightMm())
              + " mm; the part is "
              + Words.number(acrossMm)
              + " x "
              + Words.number(dropMm));
    }
    if (piece.turned() && !item.mayTurn()) {
      said.add(piece.key() + " hangs turned and may not be");
    }
    if (item.depthMm() > load.carrier().face().depthMm() + Hung.ROUNDING_MM) {
      said.add(
          piece.key()
              + " stands "
              + Words.number(item.depthMm())
              + " mm off; "
              + load.carrier().id()
              + " has room for "
              + Words.number(load.carrier().face().depthMm()));
    }
  }

  private static boolean differ(double aMm, double bMm) {
    return !(Math.abs(aMm - bMm) <= Hung.ROUNDING_MM);
  }
}
