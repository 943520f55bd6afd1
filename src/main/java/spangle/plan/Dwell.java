package spangle.plan;

/**
 * How long a lot may stay in a machine at one setting: an oven dwell that cures its heaviest part
 * and does not overbake its lightest, or an immersion. A lot without a dwell for a setting cannot
 * run at it.
 *
 * @param setting {@link Setting#index()}
 * @param minMin shortest, minutes
 * @param maxMin longest, minutes
 */
public record Dwell(int setting, int minMin, int maxMin) {}
