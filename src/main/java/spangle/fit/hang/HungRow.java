package spangle.fit.hang;

import java.util.ArrayList;
import java.util.List;

/**
 * One row of a pattern, as a hanger reads it: left to right.
 *
 * @param face face of the carrier, from 0
 * @param topMm upper edges of the pieces below the top of the face, hooks not counted, millimetres
 * @param heightMm the longest piece of the row, without its hook, millimetres
 * @param runs what hangs there from left to right, alike neighbours counted together
 */
public record HungRow(int face, double topMm, double heightMm, List<Run> runs) {

  /**
   * Pieces alike hanging side by side.
   *
   * @param key kind of piece
   * @param count how many
   * @param turned whether they hang a quarter turn from how the part is described
   */
  public record Run(String key, int count, boolean turned) {}

  /** Keeps its own copy of the runs. */
  public HungRow {
    runs = List.copyOf(runs);
  }

  /** Pieces in the row. */
  public int pieces() {
    return runs.stream().mapToInt(Run::count).sum();
  }

  /** The row of pieces that lie level, given from left to right; never empty. */
  static HungRow of(List<HangPattern.HungPiece> pieces) {
    List<Run> runs = new ArrayList<>();
    double heightMm = 0;
    for (HangPattern.HungPiece piece : pieces) {
      heightMm = Math.max(heightMm, piece.heightMm());
      int last = runs.size() - 1;
      if (last >= 0
          && runs.get(last).key().equals(piece.key())
          && runs.get(last).turned() == piece.turned()) {
        runs.set(last, new Run(piece.key(), runs.get(last).count() + 1, piece.turned()));
      } else {
        runs.add(new Run(piece.key(), 1, piece.turned()));
      }
    }
    HangPattern.HungPiece first = pieces.get(0);
    return new HungRow(first.face(), first.yMm(), heightMm, runs);
  }
}
