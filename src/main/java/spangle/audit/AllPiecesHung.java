package spangle.audit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.plan.Lot;

/** The hang pattern shows every piece of the load's lots and no other. */
final class AllPiecesHung extends Rule {
  AllPiecesHung() {
    super(
        "all-pieces-hung",
        "The hang pattern shows every piece of the load's lots once, and no other piece.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      if (load.load().pattern().isEmpty()) {
        boolean bulk = load.carrier().face().style() == CarrierFace.Style.BULK;
        if (!bulk && !load.lots().stream().allMatch(Lot::alone)) {
          findings.add(load.id(), "has no hang pattern");
        }
        continue;
      }
      Map<String, Integer> expected = Hung.expected(load);
      Map<String, Integer> hung = new LinkedHashMap<>();
      for (HungPiece piece : Hung.pieces(load)) {
        hung.merge(piece.key(), 1, Integer::sum);
      }
      Set<String> keys = new TreeSet<>(expected.keySet());
      keys.addAll(hung.keySet());
      for (String key : keys) {
        int shown = hung.getOrDefault(key, 0);
        int wanted = expected.getOrDefault(key, 0);
        if (shown != wanted) {
          findings.add(
              load.id(),
              "shows "
                  + Words.count(shown, "piece", "pieces")
                  + " of "
                  + key
                  + "; its lots bring "
                  + wanted);
        }
      }
    }
  }
}
