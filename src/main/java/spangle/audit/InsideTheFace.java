package spangle.audit;

import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangPattern.HungPiece;

/** Every piece, hook included, lies inside a face its carrier has. */
final class InsideTheFace extends Rule {
  InsideTheFace() {
    super("inside-the-face", "Every piece with its hook lies inside a face of its carrier.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : Hung.drawn(view)) {
      CarrierFace face = load.carrier().face();
      for (HungPiece piece : Hung.pieces(load)) {
        if (piece.face() < 0 || piece.face() >= face.faces()) {
          findings.add(
              load.id(),
              Hung.at(piece)
                  + "; "
                  + load.carrier().id()
                  + " has "
                  + Words.count(face.faces(), "face", "faces"));
        }
        boolean inside =
            piece.xMm() >= -Hung.ROUNDING_MM
                && piece.yMm() - face.hookDropMm() >= -Hung.ROUNDING_MM
                && piece.xMm() + piece.widthMm() <= face.widthMm() + Hung.ROUNDING_MM
                && piece.yMm() + piece.heightMm() <= face.heightMm() + Hung.ROUNDING_MM;
        if (!inside) {
          findings.add(
              load.id(),
              Hung.at(piece)
                  + ", "
                  + Words.number(piece.widthMm())
                  + " x "
                  + Words.number(piece.heightMm())
                  + " mm below a hook of "
                  + Words.number(face.hookDropMm())
                  + ", leaves the face of "
                  + Words.number(face.widthMm())
                  + " x "
                  + Words.number(face.heightMm()));
        }
      }
    }
  }
}
