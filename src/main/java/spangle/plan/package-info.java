/**
 * Lots, loads, batches, the brief that says all a solver may know of a week, the plan that answers
 * it, and findings. Times are whole minutes from the week's zero (Monday 00:00). Nothing here reads
 * files, searches, or prints.
 */
@org.jspecify.annotations.NullMarked
package spangle.plan;
