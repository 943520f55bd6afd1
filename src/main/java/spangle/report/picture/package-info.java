/**
 * Drawings on the sheets, as inline SVG without any outside reference: line charts, hang patterns,
 * dip sketches, load codes. Patterns stand for colours so that nothing is lost in black and white.
 */
@org.jspecify.annotations.NullMarked
package spangle.report.picture;
