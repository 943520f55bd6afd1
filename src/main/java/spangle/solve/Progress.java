package spangle.solve;

/**
 * Where a search stands.
 *
 * @param seconds since it began
 * @param leftOut weight of lots the best plan leaves out
 * @param goal the best plan's weighed sum without them; smaller is better
 * @param lateLots weighted late lots of the best plan
 * @param batches batches of the best plan
 * @param improvements better plans found so far, the first plan not counted
 */
public record Progress(
    double seconds, long leftOut, long goal, long lateLots, long batches, int improvements) {}
