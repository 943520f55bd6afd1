/**
 * Lengths, masses, areas, films, temperatures and minutes: small records, and the border where text
 * with a unit becomes a plain number in the house unit (mm, um, kg, m2, l, C, K, minutes). Nothing
 * of the trade lives here: no steel, no zinc, no rule.
 */
@org.jspecify.annotations.NullMarked
package spangle.measure;
