/**
 * Shapes and flat patterns become area, mass, envelope and hollow spaces. Figures of one piece of
 * metal live here; no coating, no carrier, no file format and no plan does.
 */
@org.jspecify.annotations.NullMarked
package spangle.part;
