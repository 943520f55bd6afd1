package spangle.report;

import java.util.OptionalInt;

/**
 * A part a shut gate keeps out of the plan. Only a person opens a gate.
 *
 * @param jobId the order
 * @param partId the part
 * @param partName words for the sheet
 * @param pieces how many wait
 * @param gate stable code of the gate
 * @param words what is wrong or not known, with value and limit, and what would open the gate
 * @param whoAnswers who must answer: "design", "customer", "purchasing"
 * @param danger what passing it over would do
 * @param dueMin the job's due time; empty where it has none
 */
public record HeldPart(
    String jobId,
    String partId,
    String partName,
    int pieces,
    String gate,
    String words,
    String whoAnswers,
    Danger danger,
    OptionalInt dueMin) {}
