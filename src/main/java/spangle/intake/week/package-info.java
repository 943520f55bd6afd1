/**
 * A week as it was read: the shop, its coatings, the jobs, kits and signed gates, in house units
 * and in minutes from the week's zero. Only records; whoever reads files stands elsewhere.
 */
@org.jspecify.annotations.NullMarked
package spangle.intake.week;
