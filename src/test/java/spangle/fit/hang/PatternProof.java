package spangle.fit.hang;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spangle.fit.hang.HangPattern.HungPiece;

/** Proves a pattern piece against piece, in millimetres, knowing nothing of how it was made. */
final class PatternProof {
  private static final double EPS = 1e-6;

  private PatternProof() {}

  static void prove(CarrierFace face, List<HangItem> items, HangPattern pattern) {
    Map<String, Integer> wanted = new TreeMap<>();
    Map<String, HangItem> byKey = new TreeMap<>();
    for (HangItem item : items) {
      wanted.merge(item.key(), item.pieces(), Integer::sum);
      byKey.put(item.key(), item);
    }
    assertThat(pattern.counts()).isEqualTo(wanted);
    proveCarrier(face, byKey, pattern);
  }

  static void proveCarrier(CarrierFace face, Map<String, HangItem> byKey, HangPattern pattern) {
    List<HungPiece> pieces = pattern.pieces();
    double massKg = 0;
    long hooks = 0;
    for (int i = 0; i < pieces.size(); i++) {
      HungPiece a = pieces.get(i);
      HangItem item = byKey.get(a.key());
      massKg += item.massKg();
      hooks += item.hooksPerPiece();
      proveSize(item, a);
      if (face.style() == CarrierFace.Style.BULK) {
        continue;
      }
      proveInside(face, a);
      for (int j = 0; j < i; j++) {
        HungPiece b = pieces.get(j);
        assertThat(a.face() != b.face() || apart(face, a, b) || apart(face, b, a))
            .as("%s and %s keep their distance", a, b)
            .isTrue();
      }
    }
    assertThat(massKg).isLessThanOrEqualTo(face.maxMassKg() + EPS);
    if (face.style() != CarrierFace.Style.BULK) {
      assertThat(hooks).isLessThanOrEqualTo(face.maxHooks());
    }
  }

  private static void proveSize(HangItem item, HungPiece a) {
    assertThat(a.widthMm()).isEqualTo(a.turned() ? item.dropMm() : item.acrossMm());
    assertThat(a.heightMm()).isEqualTo(a.turned() ? item.acrossMm() : item.dropMm());
    assertThat(!a.turned() || item.mayTurn()).isTrue();
  }

  private static void proveInside(CarrierFace face, HungPiece a) {
    assertThat(a.face()).isBetween(0, face.faces() - 1);
    assertThat(a.xMm()).isGreaterThanOrEqualTo(-EPS);
    assertThat(a.rightMm()).isLessThanOrEqualTo(face.widthMm() + EPS);
    assertThat(a.yMm() - face.hookDropMm()).isGreaterThanOrEqualTo(-EPS);
    assertThat(a.bottomMm()).isLessThanOrEqualTo(face.heightMm() + EPS);
    if (face.hookPitchMm() > 0) {
      double places = a.xMm() / face.hookPitchMm();
      assertThat(Math.abs(places - Math.rint(places))).isLessThan(1e-6);
    }
  }

  /** Whether b is right of a or below a by the gap; a hook hangs above b. */
  private static boolean apart(CarrierFace face, HungPiece a, HungPiece b) {
    return b.xMm() >= a.rightMm() + face.gapAcrossMm() - EPS
        || b.yMm() - face.hookDropMm() >= a.bottomMm() + face.gapDownMm() - EPS;
  }
}
