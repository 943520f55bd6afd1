/**
 * From the files a shop has to facts a planner can use: week folders, job files, spreadsheets,
 * drawings, and the list of everything that is wrong or doubtful in them. Nothing here plans.
 */
@org.jspecify.annotations.NullMarked
package spangle.intake;
