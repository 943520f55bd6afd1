/**
 * The shop: racks, carts, beams, baskets, ovens, booths, tanks, kettles, lines and the shift
 * calendar, as facts with units. No coating numbers, no fit, no planning lives here.
 */
@org.jspecify.annotations.NullMarked
package spangle.equipment;
