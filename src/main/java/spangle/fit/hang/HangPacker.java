package spangle.fit.hang;

import java.util.List;
import java.util.Optional;

/**
 * Answers whether and how parts hang on a carrier. Everything here is calculation without memory:
 * the same question has the same answer, on any thread.
 */
public final class HangPacker {
  /** A tenth of a second or so for a carrier with a hundred different pieces. */
  private static final int CHANCES = 2000;

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
      return QuickHanging.fits(face, items)
          ? Optional.of(Baskets.thrownIn(items))
          : Optional.empty();
    }
    QuickHanging quick = new QuickHanging(face, items);
    return quick.hang() || quick.hangByChance(CHANCES)
        ? Optional.of(quick.pattern())
        : Optional.empty();
  }

  /**
   * Hangs all pieces on as few carriers of this kind as the effort finds. Pieces of one item may be
   * spread over several carriers.
   *
   * @throws IllegalArgumentException when a piece does not go on the carrier even alone
   */
  public static List<HangPattern> packAll(
      CarrierFace face, List<HangItem> items, HangEffort effort) {
    return Packing.all(face, items, effort);
  }

  /** The same with the quick rules only: one carrier after the other, no search. */
  public static List<HangPattern> packAllQuickly(CarrierFace face, List<HangItem> items) {
    return Packing.all(face, items, HangEffort.rounds(0));
  }

  /**
   * A number of carriers below which no hanging can go, for all pieces together: by room, mass and
   * hooks, or mass and volume for a basket. 0 for no pieces.
   *
   * @throws IllegalArgumentException when a piece does not go on the carrier even alone
   */
  public static int fewestCarriers(CarrierFace face, List<HangItem> items) {
    return Packing.fewest(face, items);
  }
}
