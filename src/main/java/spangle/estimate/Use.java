package spangle.estimate;

import spangle.measure.LowLikelyHigh;

/**
 * One draw on the store.
 *
 * @param jobId the order that needs it; {@link #COLOUR_LOSS} for what stays in hoses and box,
 *     {@link #BATH_LEVEL} for what brings a bath up, {@link #ALLOWANCE} for what is kept for
 *     rejects
 * @param atMin when, minutes from the week's zero
 * @param amount how much
 * @param planned false for work that waits: it needs its powder all the same
 * @param claim what speaks for it when there is not enough
 */
public record Use(String jobId, int atMin, LowLikelyHigh amount, boolean planned, Claim claim) {
  /** Stands for an order where powder stays in hoses, pump and box. */
  public static final String COLOUR_LOSS = "colour loss";

  /** Stands for an order where zinc brings a bath up that was read too low. */
  public static final String BATH_LEVEL = "bath level";

  /** Stands for an order where material is kept ready for pieces that will be rejected. */
  public static final String ALLOWANCE = "allowance for rejects";

  /**
   * What speaks for a draw when there is not enough.
   *
   * @param dueMin when the work is due; for a kit when the kit is
   * @param kitId kit that waits for it; empty where none does
   * @param oneLot whether all visible parts of that kit must come from one maker's lot
   * @param lot the maker's lot the plan keeps for it; empty where it keeps none
   */
  public record Claim(int dueMin, String kitId, boolean oneLot, String lot) {
    /** Work nobody waits for more than for other work. */
    public static final Claim PLAIN = new Claim(Integer.MAX_VALUE, "", false);

    /** A claim the plan keeps no lot for. */
    public Claim(int dueMin, String kitId, boolean oneLot) {
      this(dueMin, kitId, oneLot, "");
    }

    /** Whether a kit waits for it. */
    public boolean forKit() {
      return !kitId.isEmpty();
    }
  }

  /** A draw that has no more claim than others. */
  public Use(String jobId, int atMin, LowLikelyHigh amount, boolean planned) {
    this(jobId, atMin, amount, planned, Claim.PLAIN);
  }
}
