/**
 * The clock of the line: one function that turns an order of batches and loads into times, and the
 * brief in arrays that it runs on. Knows nothing of searching; the search knows nothing of time.
 */
@org.jspecify.annotations.NullMarked
package spangle.plan.clock;
