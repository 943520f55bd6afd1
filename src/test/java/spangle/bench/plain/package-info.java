/**
 * Plain OptaPlanner with its defaults, to compare with: a list of lots for each oven, batches read
 * off the list with the product's own loads, windows and machine clock, no own moves, no own
 * acceptance, no own construction.
 */
@org.jspecify.annotations.NullMarked
package spangle.bench.plain;
