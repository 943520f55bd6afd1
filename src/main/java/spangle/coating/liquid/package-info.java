/** Liquid paint: wet film, spreading rate, litres and components. No planning, no stock. */
@org.jspecify.annotations.NullMarked
package spangle.coating.liquid;
