package spangle.intake.drawing;

import java.util.List;
import java.util.Optional;
import spangle.part.flat.Point;
import spangle.part.flat.Stroke;

/**
 * A DXF file as read: lines in the file's own unit.
 *
 * @param strokes drawn lines, blocks put in place
 * @param words words that may speak of bends
 * @param unit unit by the header; empty where it says none
 * @param metricHint whether the header measures in metric, where it says anything
 */
record Drawing(
    List<Stroke> strokes,
    List<Note> words,
    Optional<DrawingUnit> unit,
    Optional<Boolean> metricHint) {
  /** Copies the lists. */
  Drawing {
    strokes = List.copyOf(strokes);
    words = List.copyOf(words);
  }

  /**
   * Words and where they stand.
   *
   * @param words the words
   * @param at where
   */
  record Note(String words, Point at) {}
}
