/**
 * Finds a plan: the search over orders of batches, driven by OptaPlanner, which no other package
 * knows. Times come from {@link spangle.plan.clock}; nothing here decides what a rule means.
 */
@org.jspecify.annotations.NullMarked
package spangle.solve;
