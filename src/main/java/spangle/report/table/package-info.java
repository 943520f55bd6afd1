/** The plan as tables for other programs: comma-separated text, a spreadsheet, a calendar. */
@org.jspecify.annotations.NullMarked
package spangle.report.table;
