package spangle.intake.drawing;

import java.util.List;
import spangle.part.flat.Affine;
import spangle.part.flat.Curve;
import spangle.part.flat.Point;

/** What an entity of a DXF file draws, in the block it stands in. */
sealed interface Drawn {
  /** Layer it stands on. */
  String layer();

  /**
   * Curves one after the other.
   *
   * @param curves the curves
   * @param closed whether they close
   * @param layer layer
   * @param lineKind line kind by name; empty for that of the layer
   * @param label name and line
   */
  record Figure(List<Curve> curves, boolean closed, String layer, String lineKind, String label)
      implements Drawn {
    public Figure {
      curves = List.copyOf(curves);
    }
  }

  /**
   * A block put in place.
   *
   * @param block its name
   * @param place what happens to the block's points, its base point taken off
   * @param columns how many side by side
   * @param rows how many one above the other
   * @param step from column to column
   * @param rise from row to row
   * @param layer layer
   * @param lineKind line kind by name
   * @param line line in the file
   */
  record Insert(
      String block,
      Affine place,
      int columns,
      int rows,
      Point step,
      Point rise,
      String layer,
      String lineKind,
      int line)
      implements Drawn {}

  /**
   * Words on the drawing.
   *
   * @param words the words
   * @param at where
   * @param layer layer
   */
  record Words(String words, Point at, String layer) implements Drawn {}
}
