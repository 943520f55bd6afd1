/**
 * Sheets of a planned week: the page, the tables, the terminal's summary. What a sheet says beyond
 * the brief and the plan is handed in by records of this package. Nothing here searches, reads
 * input files, or judges a plan.
 */
@org.jspecify.annotations.NullMarked
package spangle.report;
