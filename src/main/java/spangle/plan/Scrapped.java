package spangle.plan;

/**
 * Pieces that are beyond saving, as one report has it: they are on no load and come back on none.
 *
 * @param jobId the order
 * @param partId the part
 * @param event number of the report
 * @param atMin when
 * @param pieces how many
 * @param rejected whether they had been finished and rejected; the others were never hung
 */
public record Scrapped(
    String jobId, String partId, int event, int atMin, int pieces, boolean rejected) {
  /** Gate of pieces that were never hung. */
  public static final String GATE = "scrapped";

  /** Gate of rejected ones. */
  public static final String REWORK_GATE = "rework-scrapped";

  /** Whether it speaks of that part of that order. */
  public boolean of(String job, String part) {
    return jobId.equals(job) && partId.equals(part);
  }

  /** Whether a gate of that name holds scrapped pieces: nobody opens it. */
  public static boolean gate(String gate) {
    return gate.equals(GATE) || gate.equals(REWORK_GATE);
  }
}
