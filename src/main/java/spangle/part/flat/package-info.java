/**
 * Flat patterns as pure geometry: curves with exact areas and lengths, loose curves joined into
 * contours, holes told from outlines, bend lines, and the size after bending. Lengths in mm. No
 * file format and no material is known here.
 */
@org.jspecify.annotations.NullMarked
package spangle.part.flat;
