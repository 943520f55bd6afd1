package spangle.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangPattern.HungPiece;

/** No two pieces of a face overlap, and each keeps its gaps to those beside and below it. */
final class PiecesClear extends Rule {
  PiecesClear() {
    super(
        "pieces-clear",
        "No two pieces overlap on a face; each keeps the gap to those beside it and to the hooks"
            + " below it.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : Hung.drawn(view)) {
      for (List<HungPiece> face : Hung.byFace(load)) {
        sweep(load, face, findings);
      }
    }
  }

  /** From left to right, against all pieces whose right edge with its gap is not yet behind. */
  private static void sweep(LoadView load, List<HungPiece> pieces, Findings findings) {
    CarrierFace face = load.carrier().face();
    List<HungPiece> byLeft = new ArrayList<>(pieces);
    byLeft.sort(Comparator.comparingDouble(HungPiece::xMm));
    List<HungPiece> near = new ArrayList<>();
    for (HungPiece piece : byLeft) {
      near.removeIf(
          other ->
              other.xMm() + other.widthMm() + face.gapAcrossMm() <= piece.xMm() + Hung.ROUNDING_MM);
      for (HungPiece other : near) {
        if (!clearDown(face, piece, other) && !clearDown(face, other, piece)) {
          findings.add(
              load.id(),
              Hung.at(piece)
                  + " and "
                  + Hung.at(other)
                  + " are closer than "
                  + Words.number(face.gapAcrossMm())
                  + " mm across and "
                  + Words.number(face.gapDownMm())
                  + " mm down");
        }
      }
      near.add(piece);
    }
  }

  /** True when the first hangs wholly above the second, gap and hook of the second included. */
  private static boolean clearDown(CarrierFace face, HungPiece upper, HungPiece lower) {
    double roomMm = lower.yMm() - face.hookDropMm() - (upper.yMm() + upper.heightMm());
    return roomMm >= face.gapDownMm() - Hung.ROUNDING_MM;
  }
}
