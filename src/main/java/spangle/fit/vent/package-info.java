/**
 * Where air leaves a hollow and zinc runs in and out again: every published rule for a kind of
 * hollow, side by side, the largest need winning by area for each of the two tasks, and the places
 * of the holes for the attitude a part hangs in. Whether a part may go in at all is the business of
 * {@code gate}.
 */
@org.jspecify.annotations.NullMarked
package spangle.fit.vent;
