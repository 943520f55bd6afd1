package spangle.fit.hang;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Thrown-in work: every basket is filled, the largest pieces first, before the next is begun. */
final class Baskets {
  private Baskets() {}

  /** The pieces as a pattern; in a basket they have no place. */
  static HangPattern thrownIn(List<HangItem> items) {
    List<HangPattern.HungPiece> pieces = new ArrayList<>();
    for (HangItem item : items) {
      pieces.addAll(
          Collections.nCopies(
              item.pieces(),
              new HangPattern.HungPiece(
                  item.key(), 0, 0, 0, item.acrossMm(), item.dropMm(), false)));
    }
    return new HangPattern(pieces);
  }

  static List<HangPattern> fill(CarrierFace basket, List<HangItem> items) {
    List<HangItem> waiting = new ArrayList<>(items);
    waiting.sort(Comparator.comparingDouble(Limits::envelopeMm3).reversed());
    List<HangPattern> patterns = new ArrayList<>();
    while (!waiting.isEmpty()) {
      double massKg = basket.maxMassKg();
      double volumeMm3 = Limits.usableVolumeMm3(basket);
      List<HangItem> inside = new ArrayList<>();
      List<HangItem> outside = new ArrayList<>();
      for (HangItem item : waiting) {
        int fit =
            Math.min(
                Limits.times(massKg, item.massKg()),
                Limits.times(volumeMm3, Limits.envelopeMm3(item)));
        int count = Math.min(fit, item.pieces());
        if (count > 0) {
          inside.add(item.withPieces(count));
          massKg = Math.max(0, massKg - count * item.massKg());
          volumeMm3 = Math.max(0, volumeMm3 - count * Limits.envelopeMm3(item));
        }
        if (count < item.pieces()) {
          outside.add(item.withPieces(item.pieces() - count));
        }
      }
      patterns.add(thrownIn(inside));
      waiting = outside;
    }
    return patterns;
  }
}
