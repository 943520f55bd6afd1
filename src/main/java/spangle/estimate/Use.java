package spangle.estimate;

import spangle.measure.LowLikelyHigh;

/**
 * One draw on the store.
 *
 * @param jobId the order that needs it; "colour loss" for what stays in hoses and box
 * @param atMin when, minutes from the week's zero
 * @param amount how much
 * @param planned false for work that waits: it needs its powder all the same
 */
public record Use(String jobId, int atMin, LowLikelyHigh amount, boolean planned) {}
