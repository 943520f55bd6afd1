/**
 * One page that answers whether a part goes in, and the drawing on it: the kettle from the side and
 * from its end, the part as it hangs, slings, angle, margins, holes. The same drawing stands on the
 * dip sheet. Black ink only; nothing is decided here.
 */
@org.jspecify.annotations.NullMarked
package spangle.report.fitsheet;
