package spangle.part.flat;

/**
 * A bend line with what is known of the bend.
 *
 * @param line where
 * @param angleDeg how far the sheet is turned, above 0 to 165
 * @param up whether towards the person who looks at the drawing
 * @param insideRadiusMm inside radius
 */
public record Bend(BendLine line, double angleDeg, boolean up, double insideRadiusMm) {}
