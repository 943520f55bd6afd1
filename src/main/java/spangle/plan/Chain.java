package spangle.plan;

/**
 * This leg comes after another lot's leg.
 *
 * @param lotId the earlier leg
 * @param minGapMin minutes from its end (last station visit) to the first visit of this one at
 *     least
 * @param maxGapMin at most; {@link Integer#MAX_VALUE} where there is no limit
 */
public record Chain(String lotId, int minGapMin, int maxGapMin) {}
