/**
 * What happens to a plan on the floor: the events people report, and what state they leave every
 * load and every piece in. Pure records and functions; files are read and written elsewhere.
 */
@org.jspecify.annotations.NullMarked
package spangle.plan.event;
