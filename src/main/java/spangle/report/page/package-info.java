/**
 * The page a shop prints: what stands on each sheet, as plain words ready to be set, and the
 * templates that set them. Templates escape everything; only drawings of this program go in as they
 * are.
 */
@org.jspecify.annotations.NullMarked
package spangle.report.page;
