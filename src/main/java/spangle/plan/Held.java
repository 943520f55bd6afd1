package spangle.plan;

/**
 * Pieces a shut gate keeps out of the plan. Only a person opens a gate; no date does.
 *
 * @param jobId the order
 * @param partId the part
 * @param name words for the sheet
 * @param pieces how many wait
 * @param gate stable name of the gate
 * @param words what is wrong or not known, with value and limit
 * @param opens what opens it
 * @param whoAnswers who must answer
 * @param danger 0 = can hurt people, 1 = spoils work or plant, 2 = a fact is missing, 3 = only a
 *     date is at stake
 * @param dueMin the order's due time
 */
public record Held(
    String jobId,
    String partId,
    String name,
    int pieces,
    String gate,
    String words,
    String opens,
    String whoAnswers,
    int danger,
    int dueMin) {
  /** Danger of what costs nothing but time. */
  public static final int ONLY_A_DATE = 3;

  /** The gate of pieces that are not here, or of which nobody says when they come. */
  public static final String NOT_ARRIVED = "not-arrived";
}
