package spangle.fit.hang;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Answers whether and how parts hang on a carrier. Everything here is calculation without memory:
 * the same question has the same answer, on any thread.
 */
public final class HangPacker {
  private HangPacker() {}

  /** How many pieces of one kind one carrier takes, all faces together. */
  public static int capacity(CarrierFace face, HangItem item) {
    return capacityOf(face, item).pieces();
  }

  /** How many pieces of one kind one carrier takes, and what stops the next one. */
  public static HangCapacity capacityOf(CarrierFace face, HangItem item) {
    return Capacities.of(face, item);
  }

  /**
   * Whether all these pieces go on one carrier together, found by quick rules: a true is always
   * true, a false may now and then be wrong when the carrier is nearly full. Made for a search that
   * asks many thousand times a second.
   */
  public static boolean fits(CarrierFace face, List<HangItem> items) {
    return QuickHanging.fits(face, items);
  }

  /**
   * The pattern of all these pieces on one carrier; empty when none is found. Whenever {@link
   * #fits} says yes there is one.
   */
  public static Optional<HangPattern> pattern(CarrierFace face, List<HangItem> items) {
    if (items.isEmpty()) {
      return Optional.of(new HangPattern(List.of()));
    }
    if (face.style() == CarrierFace.Style.BULK) {
      return QuickHanging.fits(face, items) ? Optional.of(thrownIn(items)) : Optional.empty();
    }
    QuickHanging quick = new QuickHanging(face, items);
    return quick.hang() ? Optional.of(quick.pattern()) : Optional.empty();
  }

  private static HangPattern thrownIn(List<HangItem> items) {
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
}
