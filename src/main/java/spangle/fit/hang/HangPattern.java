package spangle.fit.hang;

import java.util.List;

/**
 * Where each piece hangs on one carrier.
 *
 * @param pieces all pieces, by face, then row from the top, then from the left
 */
public record HangPattern(List<HungPiece> pieces) {
  /** Copies the list. */
  public HangPattern {
    pieces = List.copyOf(pieces);
  }

  /**
   * One piece on its face; the origin is the face's upper left corner, y grows downward.
   *
   * @param key the item's key
   * @param face from 0
   * @param xMm left edge
   * @param yMm upper edge of the piece itself, below its hook
   * @param widthMm as hung
   * @param heightMm as hung
   * @param turned by a quarter
   */
  public record HungPiece(
      String key,
      int face,
      double xMm,
      double yMm,
      double widthMm,
      double heightMm,
      boolean turned) {}
}
