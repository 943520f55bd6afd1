package spangle.fit.hang;

/**
 * Where parts hang on a carrier.
 *
 * @param widthMm usable width of a face
 * @param heightMm usable height of a face
 * @param depthMm room off the face
 * @param faces how many faces (front and back, or rows across a kettle)
 * @param gapAcrossMm least gap between pieces side by side
 * @param gapDownMm least gap between rows
 * @param hookDropMm height a hook takes above each piece
 * @param hookPitchMm distance of hook places along a bar; 0 where hooks go anywhere
 * @param maxMassKg what the carrier bears
 * @param maxHooks hooks it has places for
 * @param style how pieces are placed
 */
public record CarrierFace(
    double widthMm,
    double heightMm,
    double depthMm,
    int faces,
    double gapAcrossMm,
    double gapDownMm,
    double hookDropMm,
    double hookPitchMm,
    double maxMassKg,
    int maxHooks,
    Style style) {
  /** Ways of placing pieces. */
  public enum Style {
    /** Rows under bars: each row as high as its tallest piece. */
    ROWS,
    /** Mesh or adjustable frame: any position. */
    FREE,
    /** Spin basket: filled in bulk, by mass and volume. */
    BULK
  }
}
