/**
 * How metal warms and cools, when a coating is cured, which parts may share an oven, and what the
 * oven burns. Temperatures in C, times in minutes.
 */
@org.jspecify.annotations.NullMarked
package spangle.coating.heat;
