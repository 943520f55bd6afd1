package spangle.audit;

import spangle.fit.hang.HangPattern.HungPiece;

/** Where the bar has hook places, pieces hang at them. */
final class HooksOnPitch extends Rule {
  HooksOnPitch() {
    super(
        "hooks-on-pitch",
        "Where a bar has hook places, the left edge of every piece lies on one of them.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : Hung.drawn(view)) {
      double pitchMm = load.carrier().face().hookPitchMm();
      if (pitchMm <= 0) {
        continue;
      }
      for (HungPiece piece : Hung.pieces(load)) {
        double offMm = Math.abs(piece.xMm() - Math.rint(piece.xMm() / pitchMm) * pitchMm);
        if (!(offMm <= Hung.ROUNDING_MM)) {
          findings.add(
              load.id(),
              Hung.at(piece)
                  + " hangs "
                  + Words.number(offMm)
                  + " mm beside a hook place; they stand every "
                  + Words.number(pitchMm)
                  + " mm");
        }
      }
    }
  }
}
