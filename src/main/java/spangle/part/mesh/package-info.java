/**
 * Bodies as triangles: surface, volume, whether the surface is closed, inner spaces that no opening
 * reaches. Pure geometry in mm; no file format and no material.
 */
@org.jspecify.annotations.NullMarked
package spangle.part.mesh;
