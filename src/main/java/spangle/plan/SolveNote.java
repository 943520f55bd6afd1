package spangle.plan;

/**
 * How a plan was found. Seconds are not kept, so that the same seed and steps give the same bytes.
 *
 * @param seed random seed
 * @param steps steps asked for; 0 when time ended the search
 * @param method one line in words
 */
public record SolveNote(long seed, long steps, String method) {}
