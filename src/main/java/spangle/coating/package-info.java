/**
 * Calculators of the coating itself, in four rooms: zinc, powder, liquid, heat. They turn measured
 * facts and data-sheet values into thickness, quantity, temperature and time. Nothing here knows
 * jobs, plans or files; a constant stands beside its source.
 */
@org.jspecify.annotations.NullMarked
package spangle.coating;
