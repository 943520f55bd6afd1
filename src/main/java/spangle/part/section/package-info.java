/**
 * Standard sections: their outlines from nominal dimensions, area and mass per metre, and the small
 * table of sizes that comes with the program. Nothing about pieces, prices or suppliers.
 */
@org.jspecify.annotations.NullMarked
package spangle.part.section;
