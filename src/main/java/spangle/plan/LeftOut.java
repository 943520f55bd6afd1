package spangle.plan;

import java.util.OptionalInt;

/**
 * A lot the plan does not hold, and why.
 *
 * @param lotId the lot
 * @param code stable name of the reason
 * @param reason in words
 * @param earliestMin earliest end that could be promised; empty where nothing can be said
 */
public record LeftOut(String lotId, String code, String reason, OptionalInt earliestMin) {}
