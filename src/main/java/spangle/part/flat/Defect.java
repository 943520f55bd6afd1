package spangle.part.flat;

/**
 * Something in a drawing a person should look at.
 *
 * @param kind what
 * @param at where
 * @param sizeMm gap or length it is about; 0 where there is none
 * @param label which drawn line, with its place in the file
 */
public record Defect(Kind kind, Point at, double sizeMm, String label) {
  /** What may be the matter. */
  public enum Kind {
    /**
     * A line to be cut does not close; it is closed straight to reckon with, since little lacks.
     */
    OPEN_CLOSED_FOR_NOW,
    /** A line to be cut does not close and is not counted. */
    OPEN,
    /** A gap too small to see was closed. */
    GAP,
    /** A line lies on another; it is counted once. */
    DOUBLED,
    /** A contour crosses itself or another. */
    CROSSING,
    /** More than two lines meet: the outer boundary was followed. */
    BRANCH,
    /** Several outlines side by side. */
    SEVERAL_PARTS,
    /** A contour inside a hole: a frame round the part, or a part in the scrap. */
    ISLAND,
    /** A straight line right across, on a layer for cuts: read as a bend line. */
    BEND_ON_CUT
  }
}
