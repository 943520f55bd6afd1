package spangle.intake.drawing;

/** What a drawing may grow to before it is refused politely. */
public final class DrawingLimits {
  /** Bytes of one drawing. */
  public static final long BYTES = 32L * 1024 * 1024;

  /** Entities in one DXF file, vertices counted. */
  static final int ENTITIES = 400_000;

  /** Group codes of one entity. */
  static final int TAGS = 200_000;

  /** Curves after all blocks have been put in place. */
  static final int CURVES = 100_000;

  /** How many lines a piece of a spline counts as. */
  static final int SPLINE_EFFORT = 8;

  /** Blocks within blocks. */
  static final int DEPTH = 16;

  /** Blocks put in place, rows and columns counted. */
  static final int INSERTS = 100_000;

  /** Control or fit points of one spline. */
  static final int SPLINE_POINTS = 5_000;

  /** Texts kept for the angles of bends. */
  static final int TEXTS = 2_000;

  /** Problems of one kind listed singly. */
  static final int LISTED = 20;

  /** Triangles of one STL file. */
  static final int FACETS = 700_000;

  private DrawingLimits() {}
}
