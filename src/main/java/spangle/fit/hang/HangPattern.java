package spangle.fit.hang;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where each piece hangs on one carrier. In a spin basket pieces have no place: they are listed all
 * the same, every one at the origin.
 *
 * @param pieces all pieces, by face, then from the top, then from the left
 */
public record HangPattern(List<HungPiece> pieces) {

  private static final Comparator<HungPiece> READING_ORDER =
      Comparator.comparingInt(HungPiece::face)
          .thenComparingDouble(HungPiece::yMm)
          .thenComparingDouble(HungPiece::xMm);

  /** Copies the list. */
  public HangPattern {
    pieces = List.copyOf(pieces);
  }

  /**
   * One piece on its face; the origin is the face's upper left corner, y grows downward.
   *
   * @param key the item's key
   * @param face from 0
   * @param xMm left edge, millimetres
   * @param yMm upper edge of the piece itself, below its hook, millimetres
   * @param widthMm as hung, millimetres
   * @param heightMm as hung, without the hook, millimetres
   * @param turned by a quarter
   */
  public record HungPiece(
      String key,
      int face,
      double xMm,
      double yMm,
      double widthMm,
      double heightMm,
      boolean turned) {

    /** Right edge, millimetres. */
    public double rightMm() {
      return xMm + widthMm;
    }

    /** Lower edge, millimetres. */
    public double bottomMm() {
      return yMm + heightMm;
    }
  }

  /** The pattern of these pieces in reading order: by face, from the top, from the left. */
  static HangPattern inReadingOrder(List<HungPiece> pieces) {
    List<HungPiece> sorted = new ArrayList<>(pieces);
    sorted.sort(READING_ORDER);
    return new HangPattern(sorted);
  }

  /**
   * The pattern as a hanger reads it: pieces whose upper edges lie level form a row, and neighbours
   * alike in a row are counted together.
   */
  public List<HungRow> rows() {
    List<HungPiece> sorted = new ArrayList<>(pieces);
    sorted.sort(READING_ORDER);
    List<HungRow> rows = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      if (i == sorted.size()
          || sorted.get(i).face() != sorted.get(start).face()
          || sorted.get(i).yMm() != sorted.get(start).yMm()) {
        rows.add(HungRow.of(sorted.subList(start, i)));
        start = i;
      }
    }
    return List.copyOf(rows);
  }

  /** Number of pieces of each kind, by key in alphabetical order. */
  public Map<String, Integer> counts() {
    Map<String, Integer> counts = new TreeMap<>();
    for (HungPiece piece : pieces) {
      counts.merge(piece.key(), 1, Integer::sum);
    }
    return counts;
  }
}
