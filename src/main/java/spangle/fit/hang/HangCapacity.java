package spangle.fit.hang;

/**
 * How many pieces of one kind a carrier takes, and why not more.
 *
 * @param pieces the number, 0 when the piece does not hang at all
 * @param limit what stops the next piece; of several that do, the first in the order room (or
 *     volume), mass, hooks
 * @param byRoom number by room (or fill volume) alone
 * @param byMass number by mass alone; {@link Integer#MAX_VALUE} without a limit
 * @param byHooks number by hooks alone; {@link Integer#MAX_VALUE} without a limit
 */
public record HangCapacity(int pieces, HangLimit limit, int byRoom, int byMass, int byHooks) {}
