/**
 * Makes the brief of a week from what was read of it: measures parts, asks the gates, works out
 * what each leg of a route needs of stations and machines, and splits orders into lots. Reads no
 * files and searches for nothing.
 */
@org.jspecify.annotations.NullMarked
package spangle.intake.brief;
