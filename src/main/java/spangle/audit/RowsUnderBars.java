package spangle.audit;

import java.util.List;
import java.util.TreeMap;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangPattern.HungPiece;

/** On a carrier with bars pieces hang in level rows, one row wholly below the other. */
final class RowsUnderBars extends Rule {
  RowsUnderBars() {
    super(
        "rows-under-bars",
        "On a carrier with bars pieces hang in level rows, and a row begins below the longest piece"
            + " of the row above.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : Hung.drawn(view)) {
      if (load.carrier().face().style() == CarrierFace.Style.ROWS) {
        Hung.byFace(load).forEach(face -> check(load, face, findings));
      }
    }
  }

  private static void check(LoadView load, List<HungPiece> pieces, Findings findings) {
    TreeMap<Double, Double> bottomByTop = new TreeMap<>();
    for (HungPiece piece : pieces) {
      Double near = bottomByTop.floorKey(piece.yMm() + Hung.ROUNDING_MM);
      double top = near != null && piece.yMm() - near <= Hung.ROUNDING_MM ? near : piece.yMm();
      bottomByTop.merge(top, piece.yMm() + piece.heightMm(), Math::max);
    }
    CarrierFace face = load.carrier().face();
    Double bottom = null;
    for (var row : bottomByTop.entrySet()) {
      if (bottom != null
          && row.getKey() - face.hookDropMm() < bottom + face.gapDownMm() - Hung.ROUNDING_MM) {
        findings.add(
            load.id(),
            "the row at "
                + Words.number(row.getKey())
                + " mm begins above the end of the row over"
                + " it, "
                + Words.number(bottom)
                + " mm, with gap and hook");
      }
      bottom = bottom == null ? row.getValue() : Math.max(bottom, row.getValue());
    }
  }
}
