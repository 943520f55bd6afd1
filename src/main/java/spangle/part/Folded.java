package spangle.part;

import java.util.List;
import spangle.measure.Box;

/**
 * A sheet part after bending.
 *
 * @param sizeMm outside size
 * @param corners points whose convex hull holds the part, in the axes of the size; none where only
 *     the size is known
 */
public record Folded(Box sizeMm, List<Corner> corners) {
  /**
   * A point in space.
   *
   * @param xMm along the length
   * @param yMm along the width
   * @param zMm along the height
   */
  public record Corner(double xMm, double yMm, double zMm) {
    /** The same with every length multiplied. */
    Corner times(double factor) {
      return new Corner(xMm * factor, yMm * factor, zMm * factor);
    }
  }

  /** Copies the list. */
  public Folded {
    corners = List.copyOf(corners);
  }

  /** A part of which only the outside size is known. */
  public static Folded sizeOnly(Box sizeMm) {
    return new Folded(sizeMm, List.of());
  }

  /** The same with every length multiplied. */
  Folded times(double factor) {
    return new Folded(
        Require.times(sizeMm, factor), corners.stream().map(c -> c.times(factor)).toList());
  }
}
