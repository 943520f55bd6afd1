package spangle.plan;

/**
 * Finished pieces of a part that were rejected and lie in the reject cage: no lot coats them again
 * until somebody has stripped them or opened the gate that holds the part.
 *
 * @param jobId the order
 * @param partId the part
 * @param pieces how many
 */
public record Caged(String jobId, String partId, int pieces) {}
