/**
 * What reported events make of a week as it was read: other arrivals, stock, hours, certificates,
 * gates. Pure functions from week to week; the plan is not known here.
 */
@org.jspecify.annotations.NullMarked
package spangle.intake.event;
