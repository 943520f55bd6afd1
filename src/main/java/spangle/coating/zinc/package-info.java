/**
 * Hot-dip zinc: what the standards ask for, what the steel makes of it, how much zinc a job takes
 * and a shop buys, and what the bath and the acid do meanwhile. Thickness in um, masses in kg.
 */
@org.jspecify.annotations.NullMarked
package spangle.coating.zinc;
