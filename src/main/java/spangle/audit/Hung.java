package spangle.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.plan.Lot;

/** What the rules of the hang pattern ask of a load. */
final class Hung {
  /** Lengths closer than this are equal: a millionth of a millimetre is rounding. */
  static final double ROUNDING_MM = 1e-6;

  private Hung() {}

  /** Open loads whose pieces hang at drawn places. */
  static List<LoadView> drawn(PlanView view) {
    return view.openLoads().stream()
        .filter(load -> load.carrier().face().style() != CarrierFace.Style.BULK)
        .filter(load -> load.load().pattern().isPresent())
        .toList();
  }

  static List<HungPiece> pieces(LoadView load) {
    return load.load().pattern().map(pattern -> pattern.pieces()).orElse(List.of());
  }

  /** Pieces of each kind that the lots of a load bring, by the key of the kind. */
  static Map<String, Integer> expected(LoadView load) {
    Map<String, Integer> expected = new LinkedHashMap<>();
    for (Lot lot : load.lots()) {
      expected.merge(lot.item().key(), lot.pieces(), Integer::sum);
    }
    return expected;
  }

  /** The kinds of a load by key. */
  static Map<String, HangItem> items(LoadView load) {
    Map<String, HangItem> items = new LinkedHashMap<>();
    load.lots().forEach(lot -> items.putIfAbsent(lot.item().key(), lot.item()));
    return items;
  }

  /** Pieces by face, from face 0 on; pieces on faces below 0 are left out. */
  static List<List<HungPiece>> byFace(LoadView load) {
    List<List<HungPiece>> faces = new ArrayList<>();
    for (HungPiece piece : pieces(load)) {
      if (piece.face() < 0 || piece.face() >= load.carrier().face().faces()) {
        continue;
      }
      while (faces.size() <= piece.face()) {
        faces.add(new ArrayList<>());
      }
      faces.get(piece.face()).add(piece);
    }
    return faces;
  }

  static String at(HungPiece piece) {
    return piece.key()
        + " at "
        + Words.number(piece.xMm())
        + " / "
        + Words.number(piece.yMm())
        + " mm of face "
        + (piece.face() + 1L);
  }
}
