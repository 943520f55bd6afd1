/**
 * How parts hang on what carries them: racks, carts and frames of the paint line, beams of the
 * kettle, spin baskets. Counts, quick yes-or-no answers, drawn patterns and bounds live here;
 * sheets and plans do not, and nothing here reads a file.
 */
@org.jspecify.annotations.NullMarked
package spangle.fit.hang;
