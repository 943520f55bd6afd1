/**
 * A plan as data: brief, plan, gates and the digests of the files it was made from, written so that
 * the same plan is the same bytes and a stranger's program can check it. Turns records into bytes
 * and back; opens no file, plans nothing, judges nothing.
 */
@org.jspecify.annotations.NullMarked
package spangle.plan.json;
