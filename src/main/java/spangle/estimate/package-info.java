/**
 * What to buy and when: need against stock by item, packs, latest order dates, the balance of every
 * day, and what a week does to a bath of zinc. No coating formulas and no planning live here.
 */
@org.jspecify.annotations.NullMarked
package spangle.estimate;
