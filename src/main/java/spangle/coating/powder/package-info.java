/**
 * Powder: coverage, film, what is sprayed and what to draw from the store. No planning, no stock.
 */
@org.jspecify.annotations.NullMarked
package spangle.coating.powder;
