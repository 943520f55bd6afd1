/**
 * Spangle plans a metal shop's finishing week. Nothing lives here; the sub-packages are the rooms,
 * and imports point one way only: measure, then part and equipment, then coating, fit, plan, then
 * intake, solve, audit, estimate and report (which do not know one another), then desk, then cli.
 */
@org.jspecify.annotations.NullMarked
package spangle;
