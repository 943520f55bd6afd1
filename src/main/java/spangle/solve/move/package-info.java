/**
 * Small changes to a week that the search draws from: a load into another batch, two lots swapped,
 * a run of batches turned. They keep who may be with whom; the clock says what they cost.
 */
@org.jspecify.annotations.NullMarked
package spangle.solve.move;
