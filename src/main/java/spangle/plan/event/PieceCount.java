package spangle.plan.event;

/**
 * Where the pieces of one part of an order are, each in one place only. Rejected pieces stay
 * counted as finished; what is good is {@link #good}.
 *
 * @param jobId the order
 * @param partId the part
 * @param leftOut in lots the plan has no room for
 * @param planned in loads nobody has touched
 * @param released in loads whose sheets are out
 * @param hung on carriers
 * @param inProcess in or behind the machine, or between two legs
 * @param done finished
 * @param suspect of those hung or in process, pieces that must be looked at
 * @param rejected finishings that did not pass, those of rework among them
 * @param reworked pieces finished again after a rejection
 * @param scrapped beyond saving: those that were never hung, in no lot any more, and of the
 *     rejected ones those that do not go round again
 */
public record PieceCount(
    String jobId,
    String partId,
    int leftOut,
    int planned,
    int released,
    int hung,
    int inProcess,
    int done,
    int suspect,
    int rejected,
    int reworked,
    int scrapped) {
  /** All pieces that are in lots. */
  public int all() {
    return leftOut + planned + released + hung + inProcess + done;
  }

  /** Pieces finished and passed. */
  public int good() {
    return done - rejected + reworked;
  }
}
