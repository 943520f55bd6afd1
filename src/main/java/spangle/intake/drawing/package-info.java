/**
 * Drawings of single parts: flat patterns in DXF, bodies in STL. Files become shapes of {@code
 * spangle.part}, with every doubt noted; nothing about jobs or weeks lives here.
 */
@org.jspecify.annotations.NullMarked
package spangle.intake.drawing;
