/**
 * Bytes into text with a place: YAML, JSON, CSV and spreadsheets as one tree of groups, series and
 * scalars, each knowing its file, line and column, behind limits on size, depth and expansion.
 * Nothing here knows what a job is.
 */
@org.jspecify.annotations.NullMarked
package spangle.intake.source;
