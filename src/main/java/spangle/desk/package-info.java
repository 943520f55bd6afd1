/**
 * The use cases: plan the week, replan, promise, fit, order, audit. The only place where the order
 * of the steps is written; no rule and no number of the trade lives here.
 */
@org.jspecify.annotations.NullMarked
package spangle.desk;
