package spangle.report;

/**
 * Why a job is late, left out, or where it is.
 *
 * @param jobId the order
 * @param words a whole sentence in plain words
 */
public record JobReason(String jobId, String words) {}
