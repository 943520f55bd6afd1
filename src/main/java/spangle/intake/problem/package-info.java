/**
 * What is wrong or doubtful in the inputs: one record per problem with file, line, column, value,
 * limit, why, what to do, and what happens meanwhile. No file is read here.
 */
@org.jspecify.annotations.NullMarked
package spangle.intake.problem;
