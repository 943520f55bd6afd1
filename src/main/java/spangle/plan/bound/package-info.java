/**
 * What no plan of a brief can go under: fewest loads, batches and dips, machine minutes, set-ups,
 * late lots. Every figure is a proof, not an estimate: it never lies above that of a plan which
 * keeps the rules; sums count one resource at a time. Knows nothing of searching and nothing of the
 * clock.
 */
@org.jspecify.annotations.NullMarked
package spangle.plan.bound;
