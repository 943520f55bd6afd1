/**
 * What follows from a week's report by looking things up and adding: times in words, kits, what
 * waits for whom, what bending is asked for, the ten answers. No layout lives here.
 */
@org.jspecify.annotations.NullMarked
package spangle.report.week;
