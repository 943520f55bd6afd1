package spangle.plan;

/**
 * This leg comes after another lot's leg.
 *
 * @param lotId the earlier leg
 * @param minGapMin minutes from its end (last station visit) to the first visit of this one at
 *     least
 * @param maxGapMin at most; {@link Integer#MAX_VALUE} where there is no limit
 * @param startAnyway whether the earlier leg may be done though this one finds no place within its
 *     longest gap: the pieces then have to be made ready again
 */
public record Chain(String lotId, int minGapMin, int maxGapMin, boolean startAnyway) {
  /** A leg without which nobody begins the one before it. */
  public Chain(String lotId, int minGapMin, int maxGapMin) {
    this(lotId, minGapMin, maxGapMin, false);
  }

  /** The same, begun anyway. */
  public Chain anyway() {
    return new Chain(lotId, minGapMin, maxGapMin, true);
  }

  /** Whether nobody may begin the leg before where this one finds no place. */
  public boolean both() {
    return maxGapMin != Integer.MAX_VALUE && !startAnyway;
  }
}
