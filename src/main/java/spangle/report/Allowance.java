package spangle.report;

/**
 * What is kept ready of a part because some of its pieces will be rejected. It is material only: no
 * piece is made or hung for it, and no count of pieces holds it.
 *
 * @param jobId the order
 * @param partId the part
 * @param label the part in words
 * @param ordered pieces ordered
 * @param percent how much is allowed for, per cent of the pieces ordered
 * @param pieces the same in whole pieces
 * @param again rejected pieces whose second round is planned: it draws what was allowed for
 */
public record Allowance(
    String jobId, String partId, String label, int ordered, double percent, int pieces, int again) {
  /** Pieces whose material is still kept ready. */
  public int left() {
    return Math.max(0, pieces - again);
  }
}
