package spangle.fit.hang;

import java.util.Locale;

/**
 * Pieces of one kind that want to hang on a carrier, seen as they hang: show face towards the
 * sprayer.
 *
 * @param key what the pieces are called in the pattern; the same key means the same kind of piece
 * @param pieces how many, at least one
 * @param acrossMm side that lies along the bar, millimetres
 * @param dropMm side that hangs down, without the hook, millimetres
 * @param depthMm how far a piece stands off the rack, millimetres; 0 for flat work
 * @param massKg mass of one piece, kilograms
 * @param hooksPerPiece hooks one piece takes; 0 where hooks are not counted
 * @param mayTurn whether a quarter turn on the rack, show face still out, is allowed
 */
public record HangItem(
    String key,
    int pieces,
    double acrossMm,
    double dropMm,
    double depthMm,
    double massKg,
    int hooksPerPiece,
    boolean mayTurn) {

  /** Refuses sizes that no piece of metal has. */
  public HangItem {
    if (key.isBlank()) {
      throw new IllegalArgumentException("a part to hang needs a name");
    }
    if (pieces < 1) {
      throw new IllegalArgumentException(
          "%s: %d pieces to hang; at least one is needed".formatted(key, pieces));
    }
    requireSize(key, "across", acrossMm, false);
    requireSize(key, "drop", dropMm, false);
    requireSize(key, "depth", depthMm, true);
    if (!(massKg >= 0) || Double.isInfinite(massKg)) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "%s: mass %s kg is not a mass", key, massKg));
    }
    if (hooksPerPiece < 0) {
      throw new IllegalArgumentException(
          "%s: %d hooks a piece is not a count".formatted(key, hooksPerPiece));
    }
  }

  private static void requireSize(String key, String side, double sizeMm, boolean zeroAllowed) {
    boolean good = sizeMm <= CarrierFace.LONGEST_MM && (zeroAllowed ? sizeMm >= 0 : sizeMm > 0);
    if (!good) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "%s: %s %s mm; between 0 and %.0f mm expected",
              key,
              side,
              sizeMm,
              CarrierFace.LONGEST_MM));
    }
  }

  /** The same kind with another number of pieces. */
  public HangItem withPieces(int count) {
    return new HangItem(key, count, acrossMm, dropMm, depthMm, massKg, hooksPerPiece, mayTurn);
  }
}
