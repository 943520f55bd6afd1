/** How parts hang on a carrier: racks, carts, beams, spin baskets. No planning, no times. */
@org.jspecify.annotations.NullMarked
package spangle.fit.hang;
