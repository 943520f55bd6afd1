/**
 * Proves a plan against its brief: one rule of the trade per class, its own walk through the times
 * and its own geometry. Shares measured facts with the search, never how it decides or counts time:
 * nothing here knows the solver, the clock it plans with, or the packer of the carriers.
 */
@org.jspecify.annotations.NullMarked
package spangle.audit;
